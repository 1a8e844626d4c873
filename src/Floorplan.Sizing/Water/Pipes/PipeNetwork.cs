using Floorplan.Language.Quantities;
using Floorplan.Model;
using Floorplan.Model.Services;
using Floorplan.Model.Stations;
using Floorplan.Sizing.Water.Sizes;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Water.Pipes;

/// <summary>
/// The pipes of a plan: the service pipe, a pipe of its own from where the water comes in to each point and to the heater, from the
/// heater to each hot point, and from the points to what they serve.
/// </summary>
/// <param name="Entry">Where the water comes in; null where the plan does not say it: then pipes to the points have no length.</param>
/// <param name="Pipes">The service pipe first.</param>
/// <param name="Ends">What lies at the end of a way: its name, its height in mm, and the pipes that lead to it.</param>
public sealed record PipeNetwork(
    Hole? Entry, Heater? Heater, IReadOnlyList<SizedPipe> Pipes, IReadOnlyList<(string Id, double Height,
        IReadOnlyList<SizedPipe> Way)> Ends)
{
    /// <summary>Of a water point whose height the plan does not say, mm; own assumption.</summary>
    private const double UsualHeight = 1000;

    private static readonly Source OwnPipe = new(
        "own assumption: each water point has a pipe of its own from where the water comes in, or from the heater", Origin.OwnAssumption);

    internal static PipeNetwork Of(PlanFacts facts, IReadOnlyList<WaterDraw> draws, Figure peak, Workings w)
    {
        var plan = facts.Plan;
        var entry = EntryOf(plan);
        var heater = plan.Services.OfType<Heater>().FirstOrDefault();
        var byId = draws.ToDictionary(d => d.Id, StringComparer.Ordinal);
        var pipes = new List<SizedPipe>
        {
            SizedPipe.Of(
                "main", entry?.Id ?? "unit", false, peak,
                w.Of(
                    "length of the pipe", "main", 0, QuantityKind.Length, "0", "from where it comes in; the way outside is the plumber's",
                        "0",
                    SizedPipe.RouteSource),
                1, w),
        };
        var ends = new List<(string, double, IReadOnlyList<SizedPipe>)>();
        var points = facts.Supply.All.Where(s => s.Point is WaterPoint or Model.Services.Heater && s.Use.Kind != NeedKind.Drain)
            .GroupBy(s => (s.Use.Kind, s.Point!.Id)).ToList();
        foreach (var group in points)
        {
            bool isHot = group.Key.Kind == NeedKind.HotWater;
            var point = group.First().Point!;
            ServicePoint? from = isHot && heater is not null && heater.Id != point.Id ? heater : entry;
            var flow = FlowOf(group.Key.Kind, point.Id, [.. group.Select(g => byId.GetValueOrDefault(g.Use.ById)).OfType<WaterDraw>()], w);
            if (flow.Value <= 0)
            {
                continue;
            }

            var trunk = SizedPipe.Of(from?.Id ?? "way in", point.Id, isHot, flow, Length(from, point, isHot, w), 0, w);
            pipes.Add(trunk);
            foreach (var served in group.Where(g => g.Branch is not null))
            {
                if (byId.GetValueOrDefault(served.Use.ById) is { Station: { } station } draw
                    && FlowOf(group.Key.Kind, station.Id, [draw], w) is { Value: > 0 } own)
                {
                    var branch = SizedPipe.Of(point.Id, station.Id, isHot, own, Branch(served.Branch!, point, station, isHot, w), 0, w);
                    pipes.Add(branch);
                    ends.Add((station.Id, station.Top.Millimetres, [trunk, branch]));
                }
            }

            if (group.Any(g => g.Use.Station is null))
            {
                ends.Add((point.Id, HeightOf(point), [trunk]));
            }
        }

        return new PipeNetwork(entry, heater, pipes, ends);
    }

    /// <summary>The first hole that says water in its id or label, but for waste water.</summary>
    public static Hole? EntryOf(Plan plan) => plan.Services.OfType<Hole>().FirstOrDefault(h => Says(h, "water") && !Says(h, "waste"));

    private static bool Says(Hole hole, string word)
        => hole.Id.Contains(word, StringComparison.OrdinalIgnoreCase) || hole.Label.Contains(word, StringComparison.OrdinalIgnoreCase);

    /// <summary>Sinks by their units, all else by its flow.</summary>
    private static Figure FlowOf(NeedKind kind, string id, IReadOnlyList<WaterDraw> draws, Workings w)
    {
        bool isHot = kind == NeedKind.HotWater;
        double units = draws.Sum(d => isHot ? d.Units?.Hot ?? 0 : d.Units?.Cold ?? 0);
        double sinks = FixtureDemand.Gpm(units) * InchPound.CubicMetresPerGallon / 60;
        double steady = draws.Sum(d => isHot ? d.Hot : d.Cold);
        return w.Of(
            isHot ? "hot water at once" : "cold water at once", id, sinks + steady, Measure.Flow,
            "demand of the fixture units of its sinks + flows that run on",
            $"{QuantityText.Plain(units)} units: {w.Text(sinks, Measure.Flow)} + {w.Text(steady, Measure.Flow)}", FixtureDemand.Source,
            [
                .. draws.SelectMany(d => d.Inputs),
                .. draws.Where(d => d.Units is not null).Select(d => FigureInput.Taken(
                    "units of " + d.Id, QuantityText.Plain(isHot ? d.Units!.Hot : d.Units!.Cold), FixtureUnits.Source))]);
    }

    private static Figure Length(ServicePoint? from, ServicePoint to, bool isHot, Workings w)
    {
        double x = from is null ? 0 : Math.Abs((from.At.X - to.At.X).Millimetres);
        double y = from is null ? 0 : Math.Abs((from.At.Y - to.At.Y).Millimetres);
        double z = from is null ? 0 : Math.Abs(HeightOf(from) - HeightOf(to));
        return w.Of(
            "length of the pipe", SizedPipe.NameOf(from?.Id ?? "way in", to.Id, isHot), x + y + z, QuantityKind.Length,
            from is null ? "not known" : QuantityText.Distance(x + y + z, w.Units), "west to east + south to north + up or down",
            from is null
                ? "the plan does not say where the water comes in"
                : $"{WorkingText.Long(x, w.Units)} + {WorkingText.Long(y, w.Units)} + {WorkingText.Long(z, w.Units)}", OwnPipe,
            [
                .. from is null ? [] : new[] { FigureInput.Said(from.Id, "its place", from.Span) },
                FigureInput.Said(to.Id, "its place", to.Span)]);
    }

    private static Figure Branch(Figure straight, ServicePoint point, Station station, bool isHot, Workings w)
    {
        double z = Math.Abs(HeightOf(point) - station.Top.Millimetres);
        return w.Of(
            "length of the pipe", SizedPipe.NameOf(point.Id, station.Id, isHot), straight.Value + z, QuantityKind.Length,
            QuantityText.Distance(straight.Value + z, w.Units), "way on plan + up or down to its rim",
            $"{straight.Text} + {WorkingText.Long(z, w.Units)}", SizedPipe.RouteSource, FigureInput.Of(straight),
            FigureInput.Said(station.Id, "its height", station.Span));
    }

    internal static double HeightOf(ServicePoint point) => point.Height?.Millimetres ?? (point is Hole ? 0 : UsualHeight);
}
