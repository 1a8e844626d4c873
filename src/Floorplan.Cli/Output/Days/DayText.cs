using System.Globalization;
using Floorplan.Arrange.Balancing;
using Floorplan.Cli.Output.Printing;
using Floorplan.Language.Quantities;
using Floorplan.Model;
using Floorplan.Sizing.Simulation.Gains;
using Floorplan.Sizing.Simulation.Line;
using Floorplan.Sizing.Simulation.Plans;

namespace Floorplan.Cli.Output.Days;

/// <summary>What <c>day</c> prints for people.</summary>
internal static class DayText
{
    /// <summary>Less is nothing at the rounding of a pace.</summary>
    private const double LeastBand = 0.05;

    /// <summary>More changes than these are in the JSON only.</summary>
    private const int MostGains = 8;

    public static void Write(Page page, Plan plan, PlannedDay day, DayGains gains)
    {
        var planned = day.Planned;
        page.Heading(plan.Head.Title);
        if (day.FlatOut is not { } fast || day.Paced is not { } paced)
        {
            page.Line("The day was not judged:");
            foreach (var need in planned.Needs)
            {
                page.Line($"  {need.Missing}: write {need.Write}");
            }

            return;
        }

        Answer(page, plan, day, gains);
        Gains(page, day, gains);
        Crews(page, day);
        page.Heading("Stations, at the fastest");
        var stations = new TextColumns("", "working", "done, not taken on", "most waiting");
        foreach (var (step, i) in fast.Steps.Select((s, i) => (s, i)).Where(s => planned.Stations[s.i] is not null))
        {
            int places = fast.Line.Steps[i].Places;
            bool hasPlaces = places != LineStep.Unlimited;
            stations.Add(
                step.Name, hasPlaces ? Share(step.GoingTime / places, fast.End) : "-",
                hasPlaces ? Share(step.BlockedTime / places, fast.End) : "-", Whole(step.MostWaiting));
        }

        stations.Print(page);
        page.Heading("People, at the pace of the target");
        var people = new TextColumns("", "working", "carrying", "walking", "washing", "waiting", "on foot");
        foreach (var (person, i) in paced.People.Select((p, i) => (p, i)))
        {
            int number = paced.People.Take(i + 1).Count(p => p.Crew == person.Crew);
            people.Add(
                FormattableString.Invariant($"{paced.Line.Crews[person.Crew].Name} {number}"),
                Share(person.Working + person.Emptying, paced.End),
                Share(person.Carrying, paced.End), Share(person.Walking, paced.End), Share(person.Washing, paced.End),
                Share(person.Waiting, paced.End),
                QuantityText.Distance(1000 * person.Metres, plan.Units));
        }

        people.Print(page);
        Stores(page, plan, day, paced);
        page.Prose(Assumed(paced.Line, plan.Units));
    }

    private static void Answer(Page page, Plan plan, PlannedDay day, DayGains gains)
    {
        var planned = day.Planned;
        double target = planned.TargetPerHour;
        string unit = planned.Unit;
        page.Line(FormattableString.Invariant($"asked: {planned.Asked}, {planned.Items} in all"));
        foreach (var (product, pace) in planned.Products.Zip(day.Paces).Where((_, i) => i != planned.Tightest))
        {
            page.Line($"makes: {QuantityText.Coarse(pace.PerHour)}{Band(pace)} {product.Unit}/h");
        }

        page.Line(
            new Piece($"makes: {QuantityText.Coarse(day.Rate)}{Band(day.Pace)} {unit}/h", day.KeepsUp ? Tone.Good : Tone.Error),
            day.KeepsUp ? ", so it keeps up" : $", {QuantityText.Coarse(target - day.Rate)} short of the target");
        var outs = day.Paced!.Outs;
        page.Line($"at the pace of the target the first is done {After(outs[0])} after the start, the last {After(outs[^1])}");
        if (DayFrame.Of(plan, day) is { } frame)
        {
            string before = frame.StartUp > 0 ? $"{After(frame.StartUp)} of start-up, " : "";
            string estimated = frame.IsWashDownSaid ? "" : " (estimated)";
            page.Line(
                $"the crew is there {After(frame.CrewTime)}: {before}{After(frame.HandsEnd)} of work, "
                    + $"{After(frame.WashDown)} of wash-down{estimated}");
        }

        if (gains.Limit.Length > 0)
        {
            double gain = gains.Single.Concat(gains.Pairs).First().Rate - gains.Rate;
            page.Line(
                $"what holds it up first: {gains.Limit}, by {QuantityText.Coarse(gain)} {unit}/h"
                    + (gains.NextLimit.Length > 0 ? $"; then {gains.NextLimit}" : ""));
        }

        page.Gap();
    }

    /// <summary>Where times differ from piece to piece, the 95 % band of the pace.</summary>
    private static string Band(LinePace pace) => pace.Half >= LeastBand ? $" ± {QuantityText.Coarse(pace.Half)}" : "";

    private static void Gains(Page page, PlannedDay day, DayGains gains)
    {
        string unit = day.Planned.Unit;
        var table = new TextColumns("What one change would gain", unit + "/h", "more");
        foreach (var gain in gains.Single.Concat(gains.Pairs).Take(MostGains))
        {
            table.Add(gain.Text, QuantityText.Coarse(gain.Rate), Percent((gain.Rate / gains.Rate) - 1));
        }

        table.Print(page);
        if (gains.Single.Count + gains.Pairs.Count == 0)
        {
            page.Line("No change of one or two things makes the line faster.");
            page.Gap();
        }

        if (gains.ToTarget.Count > 0)
        {
            page.Heading(gains.Reaches ? "What reaches the target" : "What comes nearest to the target");
            foreach (var step in gains.ToTarget)
            {
                page.Line($"  {step.Text}: {QuantityText.Coarse(step.Rate)} {unit}/h");
            }

            page.Gap();
        }
    }

    private static void Crews(Page page, PlannedDay day)
    {
        var table = new TextColumns("Hands, at the pace of the target", "people", "work an item", "an item every", "at least");
        foreach (var crew in LeastCrew.Of(day))
        {
            string least = Whole(crew.AtLeast) + (crew.People > crew.AtLeast ? " to " + Whole(crew.People) : "");
            table.Add(
                crew.Work.Name, Whole(crew.Work.People), QuantityText.WorkTime(Ticks.Seconds(crew.Work.Content)),
                QuantityText.WorkTime(Ticks.Seconds(crew.Takt)), least);
        }

        table.Print(page);
    }

    private static void Stores(Page page, Plan plan, PlannedDay day, LineOutcome paced)
    {
        var table = new TextColumns("Stores and bins, at the pace of the target", "comes in", "holds", "full after");
        foreach (var store in DayStore.Of(plan, day))
        {
            table.Add(
                store.Id, Whole(store.Items), store.Holds is { } holds ? QuantityText.Coarse(holds) : "not said",
                store.FullAt is { } at ? After(at) : "-");
        }

        foreach (var bin in paced.Bins)
        {
            table.Add(
                bin.Bin.Name, Kilograms(bin.Kilograms, plan), Kilograms(bin.Bin.Kilograms, plan),
                bin.FullAt is { } full ? After(full) : "-");
        }

        table.Print(page);
    }

    private static string Kilograms(double kilograms, Plan plan) => QuantityText.Of(kilograms, Measure.Mass, plan.Units);

    private static string Assumed(ProductLine line, UnitSystem units)
    {
        string trolley = line.Moves.Any(m => m is { Load: > 1, Crew: >= 0 })
            ? $" Trolleys take {QuantityText.Of(DayAssumptions.TrolleyKilograms, Measure.Mass, units)} ({DayAssumptions.Own.Text})."
            : "";
        return $"Taken where the plan does not say: carrying {Speed(DayAssumptions.Loaded)} ({DayAssumptions.LoadedSource.Text}); "
            + $"walking {Speed(DayAssumptions.Empty)} ({DayAssumptions.EmptySource.Text}); to pick up and put down "
            + $"{DayAssumptions.PickAndPut.ToString(CultureInfo.InvariantCulture)} seconds ({DayAssumptions.PickSource.Text}).{trolley}"
            + " People share all work of their room, each does what is nearest, then what is farthest down the line (own assumption)."
            + " Product leaves the stores after work (own assumption). Breaks are taken together at half-time (own assumption)."
            + $" Hands are washed at the start, after a break and on the way into a room, {DayAssumptions.HandWash:0} seconds "
            + $"({DayAssumptions.HandWashSource.Text}). Wash-down: {DayAssumptions.WashDownSource.Text}."
            + " Least crew: each keeps to one stretch of the line; walking and washing are not in it.";

        string Speed(double metresPerSecond) => QuantityText.Of(metresPerSecond, Measure.Speed, units);
    }

    private static string After(long ticks) => QuantityText.Time(Ticks.Seconds(ticks));

    private static string Percent(double share) => QuantityText.Of(share, Measure.Ratio, UnitSystem.Metric);

    private static string Whole(int value) => value.ToString(CultureInfo.InvariantCulture);

    private static string Share(double part, double all) => all > 0 ? Percent(part / all) : "-";
}
