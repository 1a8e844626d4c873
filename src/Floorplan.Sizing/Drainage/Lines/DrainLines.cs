using Floorplan.Model.Services;
using Floorplan.Model.Stations;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Drainage.Lines;

/// <summary>The line of each drain: nothing that needs the day.</summary>
/// <param name="Lines">In the order of the file.</param>
/// <param name="Figures">In the order in which they are worked out.</param>
public sealed record DrainLines(IReadOnlyList<DrainLine> Lines, IReadOnlyList<Figure> Figures)
{
    public static DrainLines Of(PlanFacts facts)
    {
        var drains = facts.Plan.Services.OfType<Drain>().DistinctBy(d => d.Id).ToList();
        var w = new Workings(facts.Plan.Units);
        var byId = drains.ToDictionary(d => d.Id, StringComparer.Ordinal);
        var into = drains.Where(d => NextOf(d, byId) is not null).ToLookup(d => NextOf(d, byId)!.Id, StringComparer.Ordinal);
        var flows = (facts.WaterPiping?.Draws ?? []).ToDictionary(d => d.Id, d => d.Flow, StringComparer.Ordinal);
        var served = facts.Supply.All.Where(s => s is { Use: { Kind: NeedKind.Drain, Station: not null }, Point: not null })
            .ToLookup(s => s.Point!.Id, s => s.Use.Station!, StringComparer.Ordinal);
        return new DrainLines(
            [.. drains.Select(d => DrainLine.Of(facts.Plan, d, NextOf(d, byId), Inflow(d), w))], w.Figures);

        // Drains that come to it, each once, however the plan ties them together.
        DrainInflow Inflow(Drain drain)
        {
            var before = new List<Drain> { drain };
            var seen = new HashSet<string>(StringComparer.Ordinal) { drain.Id };
            for (int i = 0; i < before.Count && i < MostBefore; i++)
            {
                before.AddRange(into[before[i].Id].Where(d => seen.Add(d.Id)));
            }

            List<Station> stations = [.. before.SelectMany(d => served[d.Id]).DistinctBy(s => s.Id)];
            return new DrainInflow(
                [.. before.Where(d => d.Form != Language.Words.Terms.DrainForm.Sink)],
                [.. stations.Where(s => s.Role == StationRole.Sink)],
                [.. stations.Where(s => s.Role != StationRole.Sink && flows.GetValueOrDefault(s.Id) > 0).Select(s => (s, flows[s.Id]))]);
        }
    }

    /// <summary>A line of more drains than these is no small unit's; own bound, for many drains in one chain.</summary>
    private const int MostBefore = 100;

    private static Drain? NextOf(Drain drain, Dictionary<string, Drain> byId)
        => drain.RunsToId is { } id && id != drain.Id ? byId.GetValueOrDefault(id) : null;
}
