using Floorplan.Drawing.Blocks;
using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Views.Stations;
using Floorplan.Language.Quantities;
using Floorplan.Model.Shells;
using Floorplan.Sizing;
using Floorplan.Sizing.Uses;

namespace Floorplan.Drawing.Sheets.Schedules;

/// <summary>What is bought, finished, weighed and joined to the outside.</summary>
internal static class ScheduleTables
{
    private static readonly string[] Surfaces = ["floor", "base", "walls", "ceiling"];

    public static KeyTable Items(PlanFacts facts) => new(
        "Items",
        ["No", "Item", ItemSize.Words, "Empty", "Full"],
        [.. facts.Plan.Stations.GroupBy(s => s.Room.Id).SelectMany(room => room.Select(s => (IReadOnlyList<Cell>)
        [
            FormattableString.Invariant($"{s.Item}"),
            s.Caption,
            ItemSize.Whole(s, facts.Plan.Units),
            facts.Items.Find(s) is { EmptyIsSaid: true } weight ? weight.Empty : "",
            facts.Items.Find(s) is { } loaded ? loaded.Full : "",
        ]).Prepend([room.First().Room.Label]))]);

    /// <summary>Sinks among them, whose water and drain follow from what they are.</summary>
    public static KeyTable Needs(PlanFacts facts) => new(
        "What items need",
        ["No", "Item", "Needs"],
        [.. facts.Plan.Stations.Where(s => facts.Uses.By(s.Id).Any()).Select(s => (IReadOnlyList<Cell>)
            [FormattableString.Invariant($"{s.Item}"), s.Caption, UseText.All(facts.Uses.By(s.Id), facts.Plan.Units, ", ")])]);

    /// <summary>Surfaces that no room names are left out.</summary>
    public static KeyTable Finishes(PlanFacts facts)
    {
        var plan = facts.Plan;
        string[] named = [.. Surfaces.Where(s => plan.Rooms.Any(r => r.Finishes.ContainsKey(s)))];
        return new KeyTable(
            named.Length > 0 ? "Rooms and finishes" : "Rooms",
            ["Room", "Area", "Height", "Keeps", .. named.Select(s => char.ToUpperInvariant(s[0]) + s[1..])],
            [.. plan.Rooms.Select(r => (IReadOnlyList<Cell>)
            [
                r.Label,
                facts.RoomSizes[r.Id].Area,
                Tape.For(plan.Units).Cell(r.CeilingHeight),
                r.KeepCelsius is { } keep ? QuantityText.Of(keep, Measure.Temperature, plan.Units) : "",
                .. named.Select(s => r.Finishes.GetValueOrDefault(s, "")),
            ])]);
    }

    /// <summary>What the unit weighs, part by part; null where the plan says nothing of it.</summary>
    public static KeyTable? Weights(PlanFacts facts)
    {
        var weight = facts.Weight;
        if (weight.Parts.Count == 0)
        {
            return null;
        }

        var rows = weight.Parts.Select(p => (IReadOnlyList<Cell>)[p.Name, p.Empty, p.Full]).ToList();
        if (facts.Items.All > facts.Items.Weighed.Count)
        {
            rows.Add([SheetHead.Count(facts.Items.All - facts.Items.Weighed.Count, "thing") + " without a weight", "?", "?"]);
        }

        if (!weight.IsWhole && facts.Plan.Shell.Kind != ShellKind.Shed)
        {
            rows.Add(["bare shell: not said", "?", "?"]);
        }

        rows.Add(["together, as far as known", weight.Empty, weight.Full]);
        return new KeyTable("Weights", ["What", "Empty", "Full"], rows);
    }

    public static KeyTable Connections(PlanFacts facts) => new(
        "Connections to outside",
        ["What", "Uses", "All at once", "Without a figure", "To order"],
        [.. facts.Connections.Select(c => (IReadOnlyList<Cell>)
        [
            c.Name, c.Uses, c.Together is { } sum ? sum : "", c.NotSaid > 0 ? FormattableString.Invariant($"{c.NotSaid}") : "",
            string.Join("; ", ConnectionSize.Of(c.Kind, facts)),
        ])]);
}
