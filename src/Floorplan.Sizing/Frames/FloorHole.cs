using Floorplan.Language.Quantities;
using Floorplan.Model;
using Floorplan.Model.Services;

namespace Floorplan.Sizing.Frames;

/// <summary>The hole of one floor drain, from the steel datum.</summary>
/// <param name="X">Of its middle, east.</param>
/// <param name="Y">Of its middle, north.</param>
/// <param name="Diameter">Of the drain's pipe; the hole is made to fit the drain that is bought. Null when the plan does not say it.</param>
public sealed record FloorHole(ServicePoint Drain, Length X, Length Y, Length? Diameter)
{
    public static IReadOnlyList<FloorHole> Of(Plan plan) =>
    [
        .. plan.Services.Where(s => s is { Kind: ServiceKind.Drain, Form: "floor" })
            .Select(s => new FloorHole(s, s.At.X - plan.Shell.Datum.X, s.At.Y - plan.Shell.Datum.Y, s.Size))
            .OrderBy(h => h.X).ThenBy(h => h.Y),
    ];
}
