using Floorplan.Language.Quantities;
using Floorplan.Model.Services;
using Floorplan.Sizing.Power.Loads;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Power.Circuits;

/// <summary>How long a cable is: up from the panel, square along the walls under the ceiling, down to the thing.</summary>
internal static class CableRoute
{
    /// <summary>Of a panel that says no height, in mm.</summary>
    private const double PanelHeight = 1500;

    private static readonly Source Own = new("cables run square along the walls under the ceiling", Origin.OwnAssumption);

    /// <summary>In mm, without the heights.</summary>
    public static double OnPlan(Panel panel, PowerLoad load)
        => Math.Abs((panel.At.X - load.At.X).Millimetres) + Math.Abs((panel.At.Y - load.At.Y).Millimetres);

    /// <summary>To the farthest load of a circuit.</summary>
    public static Figure Of(Panel panel, string of, IReadOnlyList<PowerLoad> loads, Workings workings)
    {
        var far = loads.MaxBy(l => Length(panel, l).Sum())!;
        double[] parts = Length(panel, far);
        return workings.Of(
            "cable length", of, parts.Sum(), QuantityKind.Length, QuantityText.Distance(parts.Sum(), workings.Units),
            "up from the panel + east or west + north or south + down to the farthest thing",
            string.Join(" + ", parts.Select(p => WorkingText.Long(p, workings.Units))), Own,
            FigureInput.Said("panel " + panel.Id, "its place", panel.Span), FigureInput.Said(far.Id, "its place", far.Span),
            panel.Height is { } height
                ? FigureInput.Said("height of the panel", QuantityText.Length(height, workings.Units), panel.Span)
                : FigureInput.Taken(
                    "height of the panel",
                    QuantityText.Length(Language.Quantities.Length.FromMillimetres(PanelHeight), workings.Units), Own));
    }

    private static double[] Length(Panel panel, PowerLoad load)
    {
        double ceiling = Math.Max(
            panel.Room?.CeilingHeight.Millimetres ?? 0, load.Room?.CeilingHeight.Millimetres ?? 0);
        return
        [
            Math.Abs(ceiling - (panel.Height?.Millimetres ?? PanelHeight)),
            Math.Abs((panel.At.X - load.At.X).Millimetres),
            Math.Abs((panel.At.Y - load.At.Y).Millimetres),
            Math.Abs(ceiling - load.Height),
        ];
    }
}
