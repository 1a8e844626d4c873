using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax;
using Floorplan.Language.Text;
using Floorplan.Model.Shapes;

namespace Floorplan.Model.Stations;

/// <summary>A size as described, before turning: along, across; of a round one both are the diameter.</summary>
/// <param name="Height">Null when not said.</param>
public sealed record SaidSize(Length Width, Length Depth, Length? Height, bool Round)
{
    internal string Print(UnitSystem units)
    {
        var sides = Round ? new[] { Width } : [Width, Depth];
        string all = string.Join(" x ", sides.Concat(Height is { } height ? [height] : []).Select(l => QuantityText.Length(l, units)));
        return Round ? "round " + all : all;
    }
}

/// <summary>People along one side, as described.</summary>
/// <param name="Apart">Between middles; null spreads them over the side.</param>
public sealed record SaidWorkers(Side Side, int Count, Length? Apart)
{
    internal string Print(UnitSystem units) =>
        FormattableString.Invariant($"{Count} {Side.Word()}") + (Apart is { } apart ? $" {QuantityText.Length(apart, units)} apart" : "");
}

/// <summary>A side to be kept clear, as described.</summary>
public sealed record SaidClear(Side Side, Length Depth, string Purpose, SourceSpan Span)
{
    internal string Print(UnitSystem units) => $"{Side.Word()} {QuantityText.Length(Depth, units)} {Purpose}".TrimEnd();
}
