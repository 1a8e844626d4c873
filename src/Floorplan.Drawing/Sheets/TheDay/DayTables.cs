using Floorplan.Drawing.Blocks;
using Floorplan.Drawing.Charts;
using Floorplan.Drawing.Frames;
using Floorplan.Language.Quantities;
using Floorplan.Sizing;
using Floorplan.Sizing.Simulation.Line;
using Floorplan.Sizing.Simulation.Plans;

namespace Floorplan.Drawing.Sheets.TheDay;

/// <summary>The day in numbers.</summary>
internal static class DayTables
{
    /// <summary>More changes than these are for <c>floorplan day</c>; own choice.</summary>
    private const int MostGains = 10;

    public static IEnumerable<KeyTable> Of(PlanFacts facts)
    {
        yield return Frame(facts);
        yield return Gains(facts);
        yield return People(facts);
        yield return Fills(facts);
    }

    /// <summary>What is missing, where the day was not run.</summary>
    public static KeyTable Needs(PlanFacts facts) => new(
        "The day was not run", ["Missing", "Write"],
        [.. facts.Day.Planned.Needs.Select(n => (IReadOnlyList<Cell>)[n.Missing, n.Write.Replace("`", "", StringComparison.Ordinal)])]);

    /// <summary>What a day is run from, for a plan that says none of it or not all.</summary>
    public static KeyTable Figures(string unit, UnitSystem units) => new(
        "Figures that a day is run from", ["Where", "Write, such as", "What it says"],
        [
            [
                "plan", $"product {unit}, {(units == UnitSystem.Metric ? "2 kg" : "4 lb")} each",
                "what goes through the unit, and what one weighs",
            ],
            ["day", $"target 60 {unit}/h for 5 h", "how many are asked for, and how long work lasts"],
            ["day", "crew kill 2, pack 3", "how many people work in a room, or at a station"],
            ["day", "breaks 30 min", "all rest together in the middle of the day"],
            ["station", "work 20 s each", "hands work so long on each item"],
            ["station", "stays 2 min", "an item stays at least so long, without hands"],
            ["station", $"batch 8 {unit}, cycle 40 s", "so many go in together, and so long it runs"],
            ["station", $"holds 18 {unit}", "places in a tank, on a rail or a rack"],
            ["station", $"waits 12 {unit}", "room for items that wait in front of it"],
            [
                "station", $"waste {(units == UnitSystem.Metric ? "0.3 kg" : "0.6 lb")} each to bin-1",
                "what fills the bin; a bin has a volume",
            ],
            ["store", $"holds 300 {unit}", "what the last store of the line can keep"],
            ["flow", "by hand, by trolley, by chute", "who or what carries, and how much at a time"],
        ]);

    private static KeyTable Frame(PlanFacts facts)
    {
        var day = facts.Day;
        var planned = day.Planned;
        var frame = DayFrame.Of(facts.Plan, day)!;
        string best = facts.FewGains.Count > 0
            ? string.Join(" and ", facts.FewGains[0].Changes.Select(c => c.Of).Distinct())
            : "no single thing";
        return new KeyTable(
            "The day in numbers", ["What", "Figure"],
            [
                ["asked for", planned.Asked],
                ["in all", FormattableString.Invariant($"{planned.Items} {planned.Things}")],
                ["the line makes at most", $"{QuantityText.Coarse(day.Rate)} {planned.Unit}/h"],
                ["keeps up", day.KeepsUp ? "yes" : "no"],
                ["first out", $"at {ClockText.Of(frame.FirstOut)}"],
                ["last out", $"at {ClockText.Of(frame.LastOut)}"],
                ["last work of the crew", $"at {ClockText.Of(frame.HandsEnd)}"],
                ["start-up before", Length(frame.StartUp)],
                [frame.IsWashDownSaid ? "wash-down after" : "wash-down after, estimated", Length(frame.WashDown)],
                ["the crew is there for", Length(frame.CrewTime)],
                ["what holds it up first", best],
            ]);
    }

    private static KeyTable Gains(PlanFacts facts)
    {
        var gains = facts.FewGains;
        double now = facts.Day.Rate;
        return new KeyTable(
            "What one change would gain", ["Change", facts.Day.Planned.Unit + "/h", "More"],
            gains.Count == 0
                ? [["No single change makes the line faster.", "", ""]]
                : [.. gains.Take(MostGains).Select(g => (IReadOnlyList<Cell>)
                    [g.Text, QuantityText.Coarse(g.Rate), Percent((g.Rate / now) - 1)])]);
    }

    private static KeyTable People(PlanFacts facts)
    {
        var paced = facts.Day.Paced!;
        return new KeyTable(
            "People, shares of the day", ["Who", "Work", "Carry", "Walk", "Wash", "Wait, rest", "On foot"],
            [.. paced.People.Index().Select(p => (IReadOnlyList<Cell>)
            [
                facts.DayInTime!.People[p.Index].Name,
                Share(p.Item.Working + p.Item.Emptying), Share(p.Item.Carrying), Share(p.Item.Walking), Share(p.Item.Washing),
                Share(p.Item.Waiting),
                OnFoot(p.Item.Metres),
            ])]);

        // Centimetres of a day's walk say nothing.
        string OnFoot(double metres)
        {
            double unit = facts.Plan.Units == UnitSystem.Metric ? 1000 : InchPound.MillimetresPerFoot;
            return QuantityText.Distance(Math.Round(1000 * metres / unit) * unit, facts.Plan.Units);
        }

        string Share(long part) => Percent(part / (double)Math.Max(1, paced.End));
    }

    private static KeyTable Fills(PlanFacts facts)
    {
        var plan = facts.Plan;
        var stores = DayStore.Of(plan, facts.Day).Select(s => Row(
            s.Id, FormattableString.Invariant($"{s.Items} {facts.Day.Planned.Things}"),
            s.Holds is { } holds ? QuantityText.Coarse(holds) : "not said", s.FullAt));
        var bins = facts.Day.Paced!.Bins.Select(b => Row(b.Bin.Name, Mass(b.Kilograms), Mass(b.Bin.Kilograms), b.FullAt));
        return new KeyTable("Stores and bins", ["What", "Comes in", "Holds", "Full at"], [.. stores, .. bins]);

        IReadOnlyList<Cell> Row(string id, string comes, string holds, long? full)
            => [DayCharts.NameOf(plan, id), comes, holds, full is { } at ? ClockText.Of(at) : "-"];

        string Mass(double kilograms) => QuantityText.Of(kilograms, Measure.Mass, plan.Units);
    }

    private static string Length(long ticks) => ticks > 0 ? QuantityText.Time(Ticks.Seconds(ticks)) : "not said";

    /// <summary>In whole percents, to compare at a glance.</summary>
    private static string Percent(double share) => QuantityText.Of(Math.Round(share, 2), Measure.Ratio, UnitSystem.Metric);
}
