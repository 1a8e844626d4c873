using Floorplan.Language.Quantities;
using Floorplan.Sizing.Power.Panels;
using Floorplan.Sizing.Sizes;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Power.Sizes;

/// <summary>Power: what is connected and what runs at once, circuits, panels, and a generator that carries it.</summary>
internal static class PowerSizes
{
    /// <summary>Null where the plan has no power.</summary>
    public static SizedSubject? Of(PlanFacts facts)
    {
        if (facts.PowerDesign is not { } design)
        {
            return null;
        }

        // Rules and sheets ask for the design alone, so only here the day is run.
        var work = new Workings(facts.Plan.Units);
        var (peak, energy) = (DayPeak.Of(facts, design.Loads, work), DayEnergy.Of(facts, design.Loads, work));
        return new SizedSubject("Power", [.. Rows(design, peak, energy)])
        {
            Figures = [.. design.Figures, .. work.Figures],
            Tables = PowerSchedules.Of(design, facts.Plan),
            Missing = [.. design.Missing, .. NotThere(facts, design, peak)],
            Cautions =
            [
                .. facts.Plan.Head.Code != Model.CodeChoice.Us && design.Generator.Motor is not null
                    ? ["A breaker of the usual curve may trip when a motor starts: the electrician chooses a motor breaker and sets it."]
                    : Array.Empty<string>(),
                "Power can kill. Circuits, cables and panel are proposals for a licensed electrician, who designs and does the work; local "
                    + "codes prevail.",
                "A generator is never joined to a panel that the public supply feeds without a transfer switch.",
            ],
        };
    }

    private static IEnumerable<SizeRow> Rows(PowerDesign design, Figure? peak, Figure? energy)
    {
        yield return SizeRow.Of("connected load", design.Connected, QuantityText.Count(design.Loads.Count, "load"));
        yield return SizeRow.Of("demand load", design.Demand, "by factors: not all is on at once");
        if (peak is not null)
        {
            yield return SizeRow.Of("highest in the day", peak, "simulated; what is not on the line runs all day");
        }

        if (energy is not null)
        {
            yield return SizeRow.Of("energy a day", energy, "with hot water and cold rooms, as if all were electric");
        }

        if (design.Panels.MaxBy(p => p.Rating is { } r ? p.Current.Value / r.Value : 0) is { } panel)
        {
            yield return SizeRow.Of("service", panel.Current, Service(panel));
        }

        var worst = design.Circuits.Where(c => c.Drop is not null).MaxBy(c => c.Drop!.Value);
        string proposed = design.Circuits.Count(c => c.IsProposed) is > 0 and int count ? $", {count} of them proposed" : "";
        yield return new SizeRow(
            "circuits", QuantityText.Plain(design.Circuits.Count) + proposed,
            worst is { Drop: { } drop } ? $"largest voltage drop {drop.Text}, circuit {worst.Name}" : "", worst?.Drop);
        if (design.Generator is { Size: { } size } generator)
        {
            string dip = generator is { Dip: { } dips, Motor: { } motor }
                ? $"dips {dips.Text} when {motor.Name} starts"
                : "no motor says its hp, so no start is looked at";
            yield return SizeRow.Of("generator", size, dip);
        }
        else
        {
            yield return new SizeRow("generator", "larger than is listed", "over 500 kVA, for an engineer", null);
        }
    }

    private static string Service(SizedPanel panel) => panel.Rating is { } rating
        ? $"panel {panel.Panel.Id} is rated {rating.Text}; lines uneven by {panel.Uneven.Text}"
        : $"panel {panel.Panel.Id} says no rating; lines uneven by {panel.Uneven.Text}";

    private static IEnumerable<NotSaid> NotThere(PlanFacts facts, PowerDesign design, Figure? peak)
    {
        var plan = facts.Plan;
        bool us = plan.Head.Code == Model.CodeChoice.Us;
        if (design.Panels.Count == 0)
        {
            string room = plan.Rooms.Count > 0 ? plan.Rooms[0].Id : "ROOM";
            yield return new NotSaid(
                "place of the panel, so no cable length and no voltage drop",
                $"panel p1 in {room}, east wall, 500 mm from south, 100 A {(us ? "240 V" : "230 V")} single-phase", plan.Head.Span);
        }

        foreach (var panel in design.Panels.Where(p => p.Rating is null))
        {
            yield return new NotSaid($"rating of panel {panel.Panel.Id}", $"100 A in panel {panel.Panel.Id}", panel.Panel.Span);
        }

        if (peak is null)
        {
            yield return new NotSaid("load through the day", "target 60 items/h for 5 h under day", plan.Head.Span);
        }

        foreach (var circuit in design.Circuits.Where(c => c.Conductor is null))
        {
            yield return new NotSaid(
                $"cable of {circuit.Of}, which draws {circuit.Current.Text}: more than one cable of the tables carries",
                circuit.Loads.Count > 1
                    ? $"another circuit at one of {string.Join(", ", circuit.Loads.Select(l => l.Id))}"
                    : $"three-phase behind the power of {circuit.Loads[0].Id}, or less power", circuit.Span);
        }
    }
}
