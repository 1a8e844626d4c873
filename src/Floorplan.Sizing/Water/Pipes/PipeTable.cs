using Floorplan.Sizing.Sizes;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Water.Pipes;

/// <summary>The pipe schedule.</summary>
internal static class PipeTable
{
    public static SizeTable Of(PipeNetwork network) => new(
        "Water pipes, run by run",
        ["Pipe", "Water", "Flow", "Run", "Size", "Speed", "Friction"],
        [
            .. network.Pipes.Select(p => new[]
            {
                p.Name, p.IsHot ? "hot" : "cold", p.Flow.Text, p.Length.Text, p.Tube?.Name ?? "none is large enough",
                    p.Velocity?.Text ?? "",
                p.Loss?.Text ?? "",
            })],
        [.. network.Pipes.SelectMany(p => new[] { p.Flow, p.Length, p.Bore, p.Velocity, p.Loss }).OfType<Figure>()]);
}
