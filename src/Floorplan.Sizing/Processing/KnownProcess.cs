using Floorplan.Model;
using Floorplan.Model.Stations;

namespace Floorplan.Sizing.Processing;

/// <summary>Steps for which a time is published.</summary>
public enum KnownProcess
{
    Bleeding,
    Scalding,
    Pasteurising,
    Chilling,
}

/// <summary>What a station does, by the words of its name and label; the language has no word of its own for it.</summary>
public static class KnownProcesses
{
    private static readonly Dictionary<KnownProcess, string[]> Words = new()
    {
        [KnownProcess.Bleeding] = ["bleed", "cone"],
        [KnownProcess.Scalding] = ["scald"],
        [KnownProcess.Pasteurising] = ["pasteur"],
        [KnownProcess.Chilling] = ["chill"],
    };

    private static readonly string[] Poultry =
        ["bird", "chicken", "hen", "broiler", "duck", "goose", "geese", "turkey", "quail", "pheasant", "guinea", "poultry"];

    public static bool Is(this Station station, KnownProcess process) => Holds($"{station.Id} {station.Label}", Words[process]);

    /// <summary>Whether what the plan makes is birds.</summary>
    public static bool IsOfPoultry(Plan plan) => plan.Head.Products.Any(p => Holds(p.Unit, Poultry));

    /// <summary>Whether one of its words begins so.</summary>
    private static bool Holds(string text, string[] beginnings) => text
        .Split([' ', '-', '_', '.', '/', ','], StringSplitOptions.RemoveEmptyEntries)
        .Any(word => Array.Exists(beginnings, b => word.StartsWith(b, StringComparison.OrdinalIgnoreCase)));
}
