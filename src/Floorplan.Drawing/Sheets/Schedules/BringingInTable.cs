using Floorplan.Drawing.Blocks;
using Floorplan.Drawing.Frames;
using Floorplan.Sizing;
using Floorplan.Sizing.CarryingIn;

namespace Floorplan.Drawing.Sheets.Schedules;

/// <summary>In which order the items are carried in.</summary>
internal static class BringingInTable
{
    public static KeyTable Of(PlanFacts facts)
    {
        var order = facts.BringingIn;
        var rows =
            order.Steps.Select(
                (step, i) => Row(FormattableString.Invariant($"{i + 1}"), step.Station.Item, step.Station.Caption, Remark(step)));
        var stuck = order.Stuck.Select(s => Row("?", s.Item, s.Caption, "no way past the others"));
        return new KeyTable("Order of bringing in", ["Step", "No", "Item", "Remark"], [.. rows, .. stuck]);
    }

    private static IReadOnlyList<Cell> Row(string step, int item, string label, string remark)
        => [step, FormattableString.Invariant($"{item}"), label, remark];

    private static string Remark(BroughtIn step) =>
        step.Wall is { } wall ? $"before the wall at {wall.Id} is closed"
        : step.Ahead.Count > 0 ? "before " + string.Join(", ", step.Ahead.Select(s => FormattableString.Invariant($"{s.Item}")))
        : "";
}
