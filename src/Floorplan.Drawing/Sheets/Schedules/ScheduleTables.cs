using System.Globalization;
using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Sheets.PowerLightAir;
using Floorplan.Language.Quantities;
using Floorplan.Model;
using Floorplan.Model.Services;
using Floorplan.Model.Shells;
using Floorplan.Model.Stations;
using Floorplan.Sizing;

namespace Floorplan.Drawing.Sheets.Schedules;

/// <summary>What is bought, finished, weighed and joined to the outside.</summary>
internal static class ScheduleTables
{
    private static readonly string[] Surfaces = ["floor", "base", "walls", "ceiling"];

    public static KeyTable Items(PlanFacts facts) => new(
        "Items",
        ["No", "Item", "Size, long × wide × high", "Empty", "Full"],
        [.. facts.Plan.Stations.GroupBy(s => s.Room.Id).SelectMany(room => room.Select(s => (IReadOnlyList<Cell>)
        [
            FormattableString.Invariant($"{s.Item}"),
            s.Caption,
            Size(s, facts.Plan.Units),
            facts.Items.Find(s) is { EmptyIsSaid: true } weight ? weight.Empty : "",
            facts.Items.Find(s) is { } loaded ? loaded.Full : "",
        ]).Prepend([room.First().Room.Label]))]);

    public static KeyTable Needs(Plan plan) => new(
        "What items need",
        ["No", "Item", "Needs"],
        [.. plan.Stations.Where(s => s.Needs.Count > 0).Select(s => (IReadOnlyList<Cell>)
            [FormattableString.Invariant($"{s.Item}"), s.Caption, string.Join(", ", s.Needs.Select(n => Need(n, plan.Units)))])]);

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
                QuantityText.Cell(r.CeilingHeight, plan.Units),
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

    public static KeyTable Connections(Plan plan)
    {
        var rows = new List<IReadOnlyList<Cell>>
        {
            Row("Cold water", plan.Stations.Count(s => s.Needs.Any(n => n.Kind == NeedKind.ColdWater)), Flow(plan, NeedKind.ColdWater)),
            Row("Hot water", plan.Stations.Count(s => s.Needs.Any(n => n.Kind == NeedKind.HotWater)), Flow(plan, NeedKind.HotWater)),
            Row("Drain", plan.Stations.Count(s => s.IsWet) + plan.Services.OfType<Drain>().Count(), ""),
            Row("Power", plan.Stations.Count(s => s.Needs.Any(n => n.Kind == NeedKind.Power)), Power(plan)),
        };
        return new KeyTable("Connections to outside, all uses at once", ["What", "Uses", "Together"], [.. rows.Where(r => r[1].Text != "0")]);

        static IReadOnlyList<Cell> Row(string what, int uses, string together) => [what, uses.ToString(CultureInfo.InvariantCulture), together];
    }

    private static string Size(Station station, UnitSystem units) => station.Diameter is { } diameter
        ? $"Ø{QuantityText.Cell(diameter, units)} × {QuantityText.Cell(station.Top - station.Bottom, units)}"
        : $"{QuantityText.Cell(Length.Max(station.Bounds.Width, station.Bounds.Depth), units)} × {QuantityText.Cell(Length.Min(station.Bounds.Width, station.Bounds.Depth), units)} × {QuantityText.Cell(station.Top - station.Bottom, units)}";

    private static string Need(Need need, UnitSystem units)
    {
        string kind = need.Kind.Word();
        string amount = need.Kind == NeedKind.Power
            ? PowerNeeds.Text(need, units)
            : string.Join(" at ", new[] { Text(need.Amount, units), Text(need.At, units) }.Where(t => t.Length > 0));
        return amount.Length == 0 || amount == kind ? kind : $"{kind} {amount}";
    }

    /// <summary>All uses open at once, in L/min or gpm; empty when none says a flow.</summary>
    private static string Flow(Plan plan, NeedKind kind)
    {
        double perSecond = plan.Stations.SelectMany(s => s.Needs).Where(n => n.Kind == kind && n.Amount is { Unit.Kind: QuantityKind.Flow }).Sum(n => n.Amount!.Value.Base);
        return perSecond == 0 ? "" : QuantityText.Of(perSecond, Measure.Flow, plan.Units);
    }

    private static string Power(Plan plan)
    {
        double watts = plan.Stations.SelectMany(s => s.Needs).Where(n => n.Kind == NeedKind.Power && n.Amount is { Unit.Kind: QuantityKind.Power }).Sum(n => n.Amount!.Value.Base);
        return watts == 0 ? "" : QuantityText.Of(watts, Measure.Power, plan.Units);
    }

    private static string Text(Quantity? quantity, UnitSystem units) => quantity is { } given ? QuantityText.Of(given, units) : "";
}
