using Floorplan.Drawing.Labels.Drawn;
using Floorplan.Drawing.Scene;

namespace Floorplan.Drawing.Labels;

/// <summary>Looks for the place of one label, at its target or led away.</summary>
/// <param name="area">Where labels may stand.</param>
/// <param name="bounds">Null where it may stand in other rooms: that is better than nowhere.</param>
/// <param name="care">How hard it is looked for.</param>
internal sealed class LabelSearch(LabelRequest request, PaperBox area, DrawnObstacles obstacles, LabelBounds? bounds, LabelCare care)
{
    /// <summary>Letters get smaller by these steps only (ISO 3098), and 2 for tags.</summary>
    private static readonly double[] Steps = [7, 5, 3.5, 2.5, 2];

    /// <summary>How finely places are tried that a label is led to, in mm; own choice.</summary>
    private const double LeaderStep = 3;
    private const int LeaderDirections = 24;

    /// <summary>A thin line through a text is as bad as a leader this much longer, mm; own choice.</summary>
    private const double CutCost = 20;

    /// <summary>A leader across another, or across a line, is as bad as one this much longer, mm; own choice.</summary>
    private const double CrossedLeaderCost = 25;
    private const double CrossedLineCost = 0.5;

    /// <summary>The same for a thin line that a tag hides.</summary>
    private const double HideCost = 4;

    /// <summary>True when a place was looked for that needs a leader, which takes long.</summary>
    public bool Led { get; private set; }

    /// <summary>At its target when it is clear there; else where it reads best, at the target or led away.</summary>
    public LabelSpot? Best(IReadOnlyList<string> lines, bool mayLead)
    {
        var near = AtTarget(lines);
        Led = mayLead && near?.Cost is not 0;
        var led = Led ? WithLeader(lines) : null;
        return led is { } far && !(near?.Cost <= far.Cost) ? led
            : near is { } found && !(request.Optional && found.Cost > request.MostCuts * CutCost) ? near
            : null;
    }

    private LabelSpot? AtTarget(IReadOnlyList<string> lines)
    {
        LabelSpot? best = null;
        foreach (var shape in Shapes(lines))
        {
            foreach (var box in Candidates.At(request, shape.Width, shape.Height))
            {
                if (!area.Holds(box) || request.Within is { } within && !within.Holds(box) || !IsFree(box))
                {
                    continue;
                }

                double cost = Cuts(box);
                if (best is null || cost < best.Cost)
                {
                    best = new LabelSpot(shape, box, null, request.Target.Centre) { Cost = cost };
                }

                if (cost == 0)
                {
                    return best;
                }
            }
        }

        return best;
    }

    private IEnumerable<LabelShape> Shapes(IReadOnlyList<string> lines)
    {
        for (double height =
            request.CapHeight; height >= request.SmallestCapHeight - 1e-9; height = Smaller(height, request.SmallestCapHeight))
        {
            yield return new LabelShape(request, lines, height, false);
            if (request.MayTurn)
            {
                yield return new LabelShape(request, lines, height, true);
            }
        }
    }

    private static double Smaller(double height, double smallest) =>
        height <= smallest + 1e-9 ? 0 : Math.Max(smallest, Steps.FirstOrDefault(s => s < height - 1e-9));

    private LabelSpot? WithLeader(IReadOnlyList<string> lines)
    {
        var shape = new LabelShape(request, lines, request.SmallestCapHeight, false);
        var to = request.LeadTo ?? request.Target.Centre;
        LabelSpot? best = null;
        int finer = care == LabelCare.Fine ? 2 : 1;
        double step = LeaderStep / finer;
        int directions = LeaderDirections * finer;
        for (double far = step; far <= request.LongestLeader && !(best?.Cost <= far); far += step)
        {
            for (int i = 0; i < directions; i++)
            {
                var (sin, cos) = Math.SinCos(2 * Math.PI * i / directions);
                var centre = new PaperPoint(to.X + (cos * (far + (shape.Width / 2))), to.Y + (sin * (far + (shape.Height / 2))));
                var box = PaperBox.Around(centre, shape.Width, shape.Height);
                var from = new PaperPoint(Math.Clamp(to.X, box.Left, box.Right), Math.Clamp(to.Y, box.Top, box.Bottom));
                if (!area.Holds(box)
                    || request.NotOver?.Overlaps(box) == true
                    || !IsFree(box)
                    || (request.KeyTarget is not null && obstacles.ThinCuts(box) > 0)
                    || !obstacles.LeaderIsFree(from, to)
                    || bounds?.HoldLeader(from, to) == false)
                {
                    continue;
                }

                double cost = far + Cuts(box);
                if (best is null || cost < best.Cost)
                {
                    int crossed = obstacles.LeadersCrossed(from, to);
                    if (care != LabelCare.Loose && crossed > 0)
                    {
                        continue;
                    }

                    cost += (crossed * CrossedLeaderCost) + (obstacles.Crossings(from, to) * CrossedLineCost);
                }

                if (best is null || cost < best.Cost)
                {
                    best = new LabelSpot(shape, box, request.Target.Holds(box) ? null : from, to) { Cost = cost };
                }
            }
        }

        return best;
    }

    private bool IsFree(PaperBox box) => obstacles.IsFree(box) && bounds?.Hold(box) != false;

    private double Cuts(PaperBox box) => obstacles.ThinCuts(box) * (request.Tag == TagShape.None ? CutCost : HideCost);
}
