using Floorplan.Model;
using Floorplan.Model.Openings;
using Floorplan.Model.Shells;

namespace Floorplan.Sizing.Frames;

/// <summary>All holes to be cut in the walls of a shell, wall by wall, each wall from its west or south end.</summary>
public static class CutOuts
{
    public static IReadOnlyList<CutOut> Of(Plan plan)
    {
        var walls = ShellWall.Of(plan.Shell);
        return
        [
            .. plan.Openings.Where(o => o.InShell && o.Kind != OpeningKind.CargoDoor)
                .Select(o => (Opening: o, Wall: walls.FirstOrDefault(w => w.Holds(o))))
                .Where(p => p.Wall is not null)
                .Select(p => CutOut.Of(p.Opening, p.Wall!, plan.Shell, plan.Units))
                .OrderBy(c => walls.ToList().IndexOf(c.Wall)).ThenBy(c => c.Along).ThenBy(c => c.Bottom)
                    .ThenBy(c => c.Opening.Id, StringComparer.Ordinal),
        ];
    }
}
