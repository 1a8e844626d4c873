using Floorplan.Model;
using Floorplan.Model.Openings;
using Floorplan.Model.Shapes;
using Floorplan.Sizing.Placing;
using SaidTable = Floorplan.Model.Details.Tables.OpeningTable;

namespace Floorplan.Drawing.Schedules;

/// <summary>Every opening with its clear size and its place in the wall, from a room's finished face and from the steel datum.</summary>
internal static class OpeningSchedule
{
    private const string Outside = "outside";

    /// <summary>Every row of the table of details that has no column of its own before them.</summary>
    private static readonly IReadOnlyList<string> OtherWords =
        [.. SaidTable.All.Select(r => r.Word).Except(["wall", "size", "place", "sill", "leaf", "closes itself", "opens from inside"])];

    public static Schedule Of(Plan plan)
    {
        string unit = Schedule.Unit(plan);
        return new Schedule(
            "openings",
            "Openings",
            [
                "id", "name", "kind", "leaf", "from", "to", "wall", $"clear width {unit}", $"clear height {unit}", $"sill {unit}",
                "set out from",
                $"along wall {unit}", $"datum x {unit}", $"datum y {unit}", "cut in shell", "closes itself", "opens from inside",
                .. OtherWords, "line"],
            [.. plan.Openings.Select(o => Row(plan, o))]);
    }

    private static IReadOnlyList<object?> Row(Plan plan, Opening opening)
    {
        var from = FromFaces.Of(opening);
        var datum = opening.Start - plan.Shell.Datum;
        var said = opening.Kind == OpeningKind.CargoDoor
            ? []
            : plan.Said.At(opening.Span, plan.Units).ToDictionary(d => d.Word, d => d.Value);
        return
        [
            opening.Id,
            opening.Label,
            opening.Kind == OpeningKind.CargoDoor ? "cargo doors" : opening.Kind.ToString().ToLowerInvariant(),
            opening.Swing?.Kind.ToString().ToLowerInvariant() ?? "",
            opening.RoomA?.Label ?? Outside,
            opening.RoomB?.Label ?? Outside,
            opening.Wall.ToString().ToLowerInvariant(),
            Schedule.Number(opening.Width, plan),
            Schedule.Number(opening.Height, plan),
            Schedule.Number(opening.Sill, plan),
            from is { } face ? $"{face.Face.Word()} face of {face.Room.Label}" : "",
            Schedule.Number(from?.Along.Distance, plan),
            Schedule.Number(datum.X, plan),
            Schedule.Number(datum.Y, plan),
            opening.InShell,
            opening.ClosesItself,
            opening.OpensFromInside,
            .. OtherWords.Select(w => said.GetValueOrDefault(w, "")),
            opening.Span.Position.Line,
        ];
    }
}
