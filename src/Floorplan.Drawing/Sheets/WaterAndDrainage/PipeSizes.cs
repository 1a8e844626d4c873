using Floorplan.Language.Quantities;
using Floorplan.Model.Services;
using Floorplan.Model.Stations;
using Floorplan.Sizing;

namespace Floorplan.Drawing.Sheets.WaterAndDrainage;

/// <summary>Sizes that pipes are lettered with: as the plan says them, or as they are worked out; empty where neither is known.</summary>
internal sealed class PipeSizes(PlanFacts facts)
{
    private readonly Dictionary<(string To, string From, bool IsHot), string> pipes =
        (facts.WaterPiping?.Network.Pipes ?? []).Where(p => p.Tube is not null)
            .GroupBy(p => (p.To, p.From, p.IsHot)).ToDictionary(g => g.Key, g => g.First().Tube!.Mark);

    private readonly Dictionary<(string To, bool IsHot), string> trunks =
        (facts.WaterPiping?.Network.Pipes ?? []).Where(p => p.Tube is not null)
            .GroupBy(p => (p.To, p.IsHot)).ToDictionary(g => g.Key, g => g.First().Tube!.Mark);

    private readonly Dictionary<string, string> drains =
        facts.DrainLines.Lines.Where(l => l.Pipe is not null).GroupBy(l => l.Drain.Id).ToDictionary(g => g.Key, g => g.First().Pipe!.Mark);

    /// <summary>Of the pipe that comes to a point.</summary>
    public string Of(NeedKind kind, ServicePoint point) => point is ISizedPoint { Size: { } size }
        ? QuantityText.Bought(size, facts.Plan.Units) : trunks.GetValueOrDefault((point.Id, kind == NeedKind.HotWater), "");

    /// <summary>Of the pipe from a point to one station; the waste of a station is the plumber's.</summary>
    public string Of(NeedKind kind, ServicePoint point, Station use)
        => kind == NeedKind.Drain ? "" : pipes.GetValueOrDefault((use.Id, point.Id, kind == NeedKind.HotWater), "");

    /// <summary>Of the line from a drain, which is no smaller than the drain.</summary>
    public string Of(Drain drain) => drains.TryGetValue(drain.Id, out string? known) ? known
        : drain.Size is { } size ? QuantityText.Bought(size, facts.Plan.Units) : "";
}
