using Floorplan.Model.Stations;
using Floorplan.Sizing;

namespace Floorplan.Drawing.Sheets.Schedules;

/// <summary>What a connection to the outside is ordered by, as the sizes have it.</summary>
internal static class ConnectionSize
{
    public static IEnumerable<string> Of(NeedKind kind, PlanFacts facts) => kind switch
    {
        NeedKind.ColdWater => Water(facts),
        NeedKind.Drain => facts.DrainLines.Lines.Where(l => l is { Next: null, Pipe: not null })
            .Select(l => $"{l.Drain.Id}: {l.Pipe!.Name}, {l.InvertAtEnd.Text} below the floor where it leaves"),
        NeedKind.Power => Power(facts),
        _ => [],
    };

    private static IEnumerable<string> Water(PlanFacts facts)
    {
        if (facts.WaterPiping is { } piping)
        {
            string size = piping.Network.Pipes[0].Tube is { } tube ? $", pipe {tube.Name}" : "";
            yield return $"{piping.AtOnce.Text} at once{size}";
        }
    }

    private static IEnumerable<string> Power(PlanFacts facts)
    {
        if (facts.PowerDesign is not { } design)
        {
            yield break;
        }

        yield return $"{design.Demand.Text} by demand";
        foreach (var panel in design.Panels)
        {
            string rating = panel.Rating is { } rated ? $" of {rated.Text}" : "";
            yield return $"panel {panel.Panel.Id}: {panel.Current.Text}{rating}";
        }
    }
}
