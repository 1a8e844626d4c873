using Floorplan.Language.Quantities;
using Floorplan.Model.Services;
using Floorplan.Model.Stations;
using Floorplan.Sizing;
using Floorplan.Sizing.Water.Pipes;

namespace Floorplan.Drawing.Sheets.WaterAndDrainage;

/// <summary>Sizes that pipes are lettered with: as the plan says them, or as they are worked out; empty where neither is known.</summary>
internal sealed class PipeSizes(PlanFacts facts)
{
    private readonly ILookup<(string To, bool IsHot), SizedPipe> pipes =
        (facts.WaterPiping?.Network.Pipes ?? []).Where(p => p.Tube is not null).ToLookup(p => (p.To, p.IsHot));

    private readonly Dictionary<string, string> drains =
        facts.DrainLines.Lines.Where(l => l.Pipe is not null).GroupBy(l => l.Drain.Id).ToDictionary(g => g.Key, g => g.First().Pipe!.Mark);

    /// <summary>Of the pipe that comes to a point.</summary>
    public string Of(NeedKind kind, ServicePoint point) => point is ISizedPoint { Size: { } size }
        ? QuantityText.Bought(size, facts.Plan.Units) : MarkOf(pipes[(point.Id, kind == NeedKind.HotWater)]);

    /// <summary>Of the pipe from a point to one station; the waste of a station is the plumber's.</summary>
    public string Of(NeedKind kind, ServicePoint point, Station use)
        => kind == NeedKind.Drain ? "" : MarkOf(pipes[(use.Id, kind == NeedKind.HotWater)].Where(p => p.From == point.Id));

    /// <summary>Of the line from a drain, which is no smaller than the drain.</summary>
    public string Of(Drain drain) => drains.TryGetValue(drain.Id, out string? known) ? known
        : drain.Size is { } size ? QuantityText.Bought(size, facts.Plan.Units) : "";

    private static string MarkOf(IEnumerable<SizedPipe> pipes) => pipes.FirstOrDefault()?.Tube!.Mark ?? "";
}
