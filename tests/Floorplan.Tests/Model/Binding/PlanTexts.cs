using Floorplan.Language.Diagnostics;
using Floorplan.Language.Syntax;
using Floorplan.Language.Text;
using Floorplan.Model;
using Floorplan.Model.Binding;
using Floorplan.Model.Binding.Files;
using Xunit;

namespace Floorplan.Tests.Model.Binding;

/// <summary>Binds plan texts for the tests of the model.</summary>
internal static class PlanTexts
{
    /// <summary>A shed of 10 000 x 4000 mm inside, two rooms that meet at 6000, a door and a hatch between them.</summary>
    public const string TwoRooms = """
        plan "Two rooms"
          units metric
        shell shed 10200 x 4200 x 2600
        room wet "Wet room" dirty from west to 6000
        room dry "Dry room" clean from 6000 to east
        partitions thickness 80
        hatch h1 wet to dry, 1500 from south, 800 x 500, sill 900

        """;

    public static BoundPlan Bind(string text, IReadOnlyDictionary<string, string>? files = null)
        => PlanBinder.Bind(SyntaxTree.Parse(new SourceText(text, "test.unit")), new MemoryFiles(files ?? new Dictionary<string, string>()));

    /// <summary>A plan without any mistake.</summary>
    public static Plan Whole(string text, IReadOnlyDictionary<string, string>? files = null)
    {
        var bound = Bind(text, files);
        Assert.Empty(bound.Diagnostics.Select(d => $"{d.Span.Position.Line}: {d.Message} ({d.Help})"));
        return bound.Plan!;
    }

    /// <summary>The only mistake of a plan.</summary>
    public static Diagnostic Mistake(string text, IReadOnlyDictionary<string, string>? files = null)
        => Assert.Single(Bind(text, files).Diagnostics);
}
