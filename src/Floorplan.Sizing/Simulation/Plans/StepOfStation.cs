using Floorplan.Language.Quantities;
using Floorplan.Model;
using Floorplan.Model.Stations;
using Floorplan.Sizing.Simulation.Line;

namespace Floorplan.Sizing.Simulation.Plans;

/// <summary>What one station does in the day, from its figures.</summary>
internal static class StepOfStation
{
    /// <param name="product">Of the plan's head.</param>
    /// <param name="crew">Who works there, or -1.</param>
    /// <param name="isLast">Nothing goes on from it: it keeps what comes.</param>
    /// <param name="needs">What is missing is added.</param>
    public static LineStep Of(Plan plan, Station station, int product, int crew, bool isLast, List<DayNeed> needs)
    {
        var own = OwnOf(plan, station, product);
        double? holds = Holds(plan, station, product);
        double? batch = own?.Batch ?? PlannedLine.InItems(station.Batch, plan, product);
        TellOther(plan, station, product, own, needs);
        long work = Ticks.Of(own?.Work ?? station.WorkEach) ?? 0;
        int pauseEvery = station.PauseEvery is { } every ? Whole((double)every.Number) : 0;
        var step = new LineStep
        {
            Name = station.Id,
            Work = TaskTime.HandSeconds(Ticks.Seconds(work), Share(station.WorkSpread)),
            Pause = pauseEvery > 0 ? Ticks.Of(station.Pause) ?? 0 : 0,
            PauseEvery = pauseEvery,
            Rework = station.ReworkAt is null ? Share(station.Rework) : 0,
            Hands = Hands(station),
            Crew = work > 0 ? crew : -1,
        };
        if (isLast)
        {
            return step with { Places = LineStep.Unlimited, Stay = new TaskTime(Ticks.Of(own?.Stays ?? station.Stays) ?? 0) };
        }

        long stay = Ticks.Of(own?.Cycle ?? own?.Stays ?? station.Cycle ?? station.Stays) ?? 0;
        if (work == 0 && stay == 0)
        {
            Need(
                needs, station, $"no time for {station.Id}",
                $"`work 20 s each`, `cycle 40 s` or `stays 2 min` in {Word(station)} {station.Id}");
        }

        if (stay > 0 && batch is null && holds is null)
        {
            Need(
                needs, station, $"not how many fit in {station.Id}, though they stay",
                $"`holds 8 {Unit(plan)}` in {Word(station)} {station.Id}, or `batch 8 {Unit(plan)}` where all go in together");
        }

        int items = Whole(batch ?? 1);
        int places = batch is not null ? Math.Max(1, Whole(holds ?? 0) / items) : stay > 0 ? Whole(holds ?? 1) : Hands(station);
        return step with
        {
            Places = places,
            Batch = items,
            Least = items,
            Stay = new TaskTime(stay),
            ChangeOver = station.ForProducts.Count > 0 ? Ticks.Of(plan.Day?.Changeover) ?? 0 : 0,
        };
    }

    /// <summary>Whether hands work there, on any product.</summary>
    public static bool HasWork(Station station) => station.WorkEach is not null || station.ForProducts.Any(p => p.Work is not null);

    /// <summary>How many of a product it holds; null where the plan does not say.</summary>
    public static double? Holds(Plan plan, Station station, int product)
        => OwnOf(plan, station, product)?.Holds ?? PlannedLine.InItems(station.Holds, plan, product);

    public static int Waits(Plan plan, Station station, int product) => (int)Math.Clamp(
        OwnOf(plan, station, product)?.Waits ?? PlannedLine.InItems(station.Waits, plan, product) ?? 0, 0, 1_000_000);

    private static SaidForProduct? OwnOf(Plan plan, Station station, int product) => plan.Head.Products.Count > product
        ? station.ForProducts.FirstOrDefault(
            f => f.Product.Equals(plan.Head.Products[product].Unit, StringComparison.OrdinalIgnoreCase))
        : null;

    /// <summary>What is counted in one product says nothing of another.</summary>
    private static void TellOther(Plan plan, Station station, int product, SaidForProduct? own, List<DayNeed> needs)
    {
        foreach (var (word, said, mine) in new[] { ("holds", station.Holds, own?.Holds), ("batch", station.Batch, own?.Batch) })
        {
            if (said is { } amount && mine is null && PlannedLine.IsOfOther(amount, plan, product))
            {
                string unit = plan.Head.Products[product].Unit;
                Need(
                    needs, station, $"not how many {unit} {station.Id} takes",
                    $"`for {unit} {word} 8` in {Word(station)} {station.Id}");
            }
        }
    }

    public static string Unit(Plan plan) => plan.Head.Products.Count > 0 ? plan.Head.Products[0].Unit : "items";

    private static void Need(List<DayNeed> needs, Station station, string missing, string write)
        => needs.Add(new DayNeed(station.Id, missing, write, station.Span));

    private static string Word(Station station) => station.Role.ToString().ToLowerInvariant();

    private static int Hands(Station station) => Math.Max(1, station.Workers.Count);

    private static int Whole(double items) => (int)Math.Clamp(Math.Floor(items + 1e-9), 1, 1_000_000);

    private static double Share(Quantity? said) => said is { Unit.Kind: QuantityKind.Ratio } share ? Math.Clamp(share.Base, 0, 1) : 0;
}
