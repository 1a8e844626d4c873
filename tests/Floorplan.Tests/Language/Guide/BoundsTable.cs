using System.Globalization;
using Floorplan.Checks.Framework;
using Floorplan.Cli.Input;
using Floorplan.Language.Details;
using Floorplan.Language.Parsing;
using Floorplan.Language.Quantities;
using Floorplan.Model.Binding;
using Floorplan.Model.Binding.Files;
using Floorplan.Model.Binding.Reading;
using Floorplan.Print.Png;

namespace Floorplan.Tests.Language.Guide;

/// <summary>The guide's table of how much a file may hold, out of the program's own figures.</summary>
internal static class BoundsTable
{
    private static (string What, long Most)[] Rows =>
    [
        ("megabytes of a file", PlanFileReader.MostMegabytes),
        ("characters of a file", Bounds.MostCharacters),
        ("lines of a file", Bounds.MostLines),
        ("characters of a name", Bounds.LongestName),
        ("characters of a label", Bounds.LongestText),
        ("digits of a number", Bounds.MostDigits),
        ("millimetres of a length", Bounds.LongestLength / 1_000_000),
        ("statements besides kinds", PlanBounds.MostThings),
        ("rooms", PlanBounds.MostRooms),
        ("rooms in each other, in a row", PlanBounds.DeepestRooms),
        ("legs of all flows", PlanBounds.MostLegs),
        ("details of one statement", Bounds.MostDetails),
        ("details that all things take from kinds", PlanBounds.MostTaken),
        ("kinds that take from one another, in a row", KindTable.LongestChain),
        ("files that kinds are read from", PlanBounds.MostFiles),
        ("megabytes of one of these files", PlanFiles.LargestMegabytes),
        ("files that read kinds from files, in a row", PlanBounds.DeepestFiles),
        ("characters of all these files together", Bounds.MostCharacters),
        ("pairs of things in one place", PlanBounds.MostPairs),
        ("more such pairs for each thing", PlanBounds.MorePairsForEach),
        ("million steps of searching in one check", PlanBounds.MostMillionSteps),
        .. QuantityBounds.Most.Select(m => (Of(m), (long)m.Number)),
        ("people in one room", Bounds.MostPeople),
        ("toilets on one site", Bounds.MostToilets),
        ("workers at one side of a station", Bounds.MostWorkers),
        ("sheets of a set", SheetDetails.LastSheet),
        ("the second half of a scale, 1:n", Bounds.SmallestScale),
        ("mistakes that are told", Bounds.MostMistakes),
        ("findings of one rule", Checker.MostOfOneRule),
        ("dots to the inch of a picture", PngWriter.MostDpi),
        ("pixels of a picture", PngWriter.MostPixels),
    ];

    private static string Of(Quantity most) => most.Unit.Kind switch
    {
        QuantityKind.Rate => "things in an hour",
        QuantityKind.Count => "things counted in one figure",
        _ => $"{KindNames.Of(most.Unit.Kind).Split(' ', 2)[1]}, in {most.Unit.Symbol}",
    };

    public static string Markdown() => "| of | at most |\n|---|---:|\n" + string.Concat(
        Rows.Select(r => $"| {r.What} | {r.Most.ToString("N0", CultureInfo.InvariantCulture).Replace(',', ' ')} |\n"));
}
