using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Scene;

namespace Floorplan.Drawing.Labels;

/// <summary>
/// Finds a place for every text of a sheet so that no two texts overlap and no heavier line or arrowhead cuts one. What is already
/// in the scene counts: fixed texts, heavy lines and dark areas are avoided always, thin lines where possible. Same input, same places.
/// </summary>
public sealed class LabelPlacer(SceneBuilder scene)
{
    private const double Shrink = 0.85;
    private const double LeaderPen = 0.18;
    private const double LeaderDot = 0.45;

    /// <summary>How far a label may be led away, and how finely places are tried, in mm; own choice.</summary>
    private const double LongestLeader = 60;
    private const double LeaderStep = 3;
    private const int LeaderDirections = 24;

    /// <summary>A thin line through a text is as bad as a leader this much longer, mm; own choice.</summary>
    private const double CutCost = 15;

    /// <summary>Leaders are looked for this often on one sheet; crowded plans of thousands of things then go by key numbers.</summary>
    private const int MostLeaderSearches = 300;

    private readonly List<LabelRequest> requests = [];
    private readonly List<PaperBox> keepOuts = [];
    private int leaderSearches;

    public void Add(LabelRequest request) => requests.Add(request);

    /// <summary>No text may stand here.</summary>
    public void KeepOut(PaperBox box) => keepOuts.Add(box);

    /// <summary>Draws all labels into the scene, within <paramref name="area"/>. Call once, when everything else of the views is drawn.</summary>
    public IReadOnlyList<LabelResult> Place(PaperBox area)
    {
        var obstacles = new Obstacles(scene.Items, DrawingStandard.Iso.HeavyFrom);
        foreach (var box in keepOuts)
        {
            obstacles.AddKeepOut(box);
        }

        var results = new List<LabelResult>();
        int keys = 0;
        foreach (var request in requests.OrderByDescending(r => r.Priority))
        {
            var result = AtTarget(request, request.Lines, area, obstacles) ?? (request.MayLead ? WithLeader(request, request.Lines, area, obstacles) : null);
            if (result is null && !request.Optional)
            {
                string number = FormattableString.Invariant($"k{keys + 1}");
                result = AtTarget(request, [number], area, obstacles) ?? WithLeader(request, [number], area, obstacles);
                if (result is not null)
                {
                    keys++;
                    result = result with { Outcome = LabelOutcome.Keyed, KeyNumber = number };
                }
            }

            results.Add(result ?? new LabelResult(request, LabelOutcome.Unplaced, null, null));
        }

        return results;
    }

    private LabelResult? AtTarget(LabelRequest request, IReadOnlyList<string> lines, PaperBox area, Obstacles obstacles)
    {
        (int Cost, LabelShape Shape, PaperBox Box)? best = null;
        foreach (var shape in Shapes(request, lines))
        {
            foreach (var box in Candidates.At(request, shape.Width, shape.Height))
            {
                if (!area.Holds(box) || request.Within is { } within && !within.Holds(box) || !obstacles.IsFree(box))
                {
                    continue;
                }

                int cost = request.Tag == TagShape.None ? obstacles.ThinCuts(box) : 0;
                if (best is null || cost < best.Value.Cost)
                {
                    best = (cost, shape, box);
                }

                if (cost == 0)
                {
                    return Draw(request, shape, box, obstacles, LabelOutcome.AtTarget);
                }
            }
        }

        return best is { } found ? Draw(request, found.Shape, found.Box, obstacles, LabelOutcome.AtTarget) : null;
    }

    private static IEnumerable<LabelShape> Shapes(LabelRequest request, IReadOnlyList<string> lines)
    {
        for (double height = request.CapHeight; height >= request.SmallestCapHeight - 1e-9; height = Smaller(height, request.SmallestCapHeight))
        {
            yield return new LabelShape(request, lines, height, false);
            if (request.MayTurn)
            {
                yield return new LabelShape(request, lines, height, true);
            }
        }
    }

    private static double Smaller(double height, double smallest) =>
        height <= smallest + 1e-9 ? 0 : Math.Max(smallest, height * Shrink);

    private LabelResult? WithLeader(LabelRequest request, IReadOnlyList<string> lines, PaperBox area, Obstacles obstacles)
    {
        if (leaderSearches++ >= MostLeaderSearches)
        {
            return null;
        }

        var shape = new LabelShape(request, lines, request.SmallestCapHeight, false);
        var to = request.LeadTo ?? request.Target.Centre;
        (double Cost, PaperBox Box, PaperPoint From)? best = null;
        for (double far = LeaderStep; far <= LongestLeader && !(best?.Cost <= far); far += LeaderStep)
        {
            for (int i = 0; i < LeaderDirections; i++)
            {
                var (sin, cos) = Math.SinCos(2 * Math.PI * i / LeaderDirections);
                var centre = new PaperPoint(to.X + (cos * (far + (shape.Width / 2))), to.Y + (sin * (far + (shape.Height / 2))));
                var box = PaperBox.Around(centre, shape.Width, shape.Height);
                var from = new PaperPoint(Math.Clamp(to.X, box.Left, box.Right), Math.Clamp(to.Y, box.Top, box.Bottom));
                if (!area.Holds(box) || !obstacles.IsFree(box) || !obstacles.LeaderIsFree(from, to))
                {
                    continue;
                }

                double cost = far + (obstacles.ThinCuts(box) * CutCost);
                if (best is null || cost < best.Value.Cost)
                {
                    best = (cost, box, from);
                }
            }
        }

        if (best is not { } found)
        {
            return null;
        }

        var pen = new Pen(LeaderPen);
        scene.Line(found.From, to, pen, Layers.Leader, request.Group, Band.Annotation);
        scene.Circle(to, LeaderDot / 2, new Pen(LeaderDot / 2), Layers.Leader, request.Group, Band.Annotation);
        obstacles.AddLeader(found.From, to);
        return Draw(request, shape, found.Box, obstacles, LabelOutcome.WithLeader);
    }

    private LabelResult Draw(LabelRequest request, LabelShape shape, PaperBox box, Obstacles obstacles, LabelOutcome outcome)
    {
        shape.Draw(scene, box);
        obstacles.AddText(box);
        return new LabelResult(request, outcome, box, null);
    }
}
