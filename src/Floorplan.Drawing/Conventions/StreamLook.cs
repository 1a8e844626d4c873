using Floorplan.Drawing.Scene;

namespace Floorplan.Drawing.Conventions;

/// <summary>How the routes of a stream look: line type, letter and colour together.</summary>
public sealed record StreamLook(string Letter, string Name, Pen Pen)
{
    private const double Width = 0.7;

    // Letters, line types and colours: the project's own choice. No letter is that of a zone or of a side of the compass; each type is
    // also told apart on a black and white copy.
    private static readonly StreamLook Product = new("A", "product", new(1.0, Palette.Blue));
    private static readonly StreamLook Waste = new("B", "waste", new(Width, Palette.Vermillion, Dashes.Dashed(0.35)));
    private static readonly StreamLook People = new("H", "people", new(Width, Palette.Green, Dashes.Dotted(Width)));
    private static readonly StreamLook Supplies = new("G", "supplies", new(Width, Palette.Black, Dashes.LongDashDot(0.35)));
    private static readonly StreamLook Returns = new("R", "returns", new(Width, Palette.Purple, Dashes.LongDashDoubleDot(0.35)));

    public static StreamLook Of(Model.Flows.Stream stream) => stream switch
    {
        Model.Flows.Stream.Product => Product,
        Model.Flows.Stream.Waste => Waste,
        Model.Flows.Stream.People => People,
        Model.Flows.Stream.Supplies => Supplies,
        Model.Flows.Stream.Returns => Returns,
        _ => throw new ArgumentOutOfRangeException(nameof(stream), stream, "no look for this stream"),
    };
}
