using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Scene;

namespace Floorplan.Drawing.Labels;

/// <summary>
/// Finds a place for every text of a sheet so that no two texts overlap and no heavier line or arrowhead cuts one. What is already
/// in the scene counts: fixed texts, heavy lines and dark areas are avoided always, thin lines where possible. Same input, same places.
/// </summary>
public sealed class LabelPlacer(SceneBuilder scene)
{
    /// <summary>Letters get smaller by these steps only (ISO 3098), and 2 for tags.</summary>
    private static readonly double[] Steps = [7, 5, 3.5, 2.5, 2];

    private const double LeaderPen = 0.18;
    private const double LeaderDot = 0.45;

    /// <summary>How far a label may be led away, and how finely places are tried, in mm; own choice.</summary>
    private const double LongestLeader = 60;
    private const double LeaderStep = 3;
    private const int LeaderDirections = 24;

    /// <summary>A thin line through a text is as bad as a leader this much longer, mm; own choice.</summary>
    private const double CutCost = 20;

    /// <summary>What another part of the sheet says too is left out rather than drawn through more lines than this lets.</summary>
    private const double MostForOptional = 3 * CutCost;

    /// <summary>A leader across another, or across a line, is as bad as one this much longer, mm; own choice.</summary>
    private const double CrossedLeaderCost = 25;
    private const double CrossedLineCost = 0.5;

    /// <summary>The same for a thin line that a tag hides.</summary>
    private const double HideCost = 4;

    /// <summary>Leaders are looked for this often on one sheet; crowded plans of thousands of things then go by key numbers.</summary>
    private const int MostLeaderSearches = 300;

    private readonly List<LabelRequest> requests = [];
    private readonly List<PaperBox> keepOuts = [];
    private readonly List<(string Of, string Words)> notShown = [];
    private int leaderSearches;

    /// <summary>What was asked for so far, in that order.</summary>
    internal IReadOnlyList<LabelRequest> Requests => requests;

    internal IReadOnlyList<PaperBox> KeepOuts => keepOuts;

    /// <summary>A label without words is none.</summary>
    public void Add(LabelRequest request)
    {
        if (request.Lines.Count > 0)
        {
            requests.Add(request);
        }
    }

    /// <summary>Puts words that were given up before a place was looked for on the list of what is not shown at its place.</summary>
    public void NotShown(string of, string words) => notShown.Add((of, words));

    /// <summary>After placing: what is not shown at its place and stands nowhere else on the sheet.</summary>
    public IReadOnlyList<(string Of, string Words)> AllNotShown => notShown;

    /// <summary>No text may stand here.</summary>
    public void KeepOut(PaperBox box) => keepOuts.Add(box);

    /// <summary>Hands over the labels of what is in a window, to be placed within it.</summary>
    /// <param name="by">From here to the other paper.</param>
    internal void CopyTo(LabelPlacer other, PaperBox window, PaperPoint by)
    {
        foreach (var request in requests.Where(r => SceneCrop.Owns(window, r.LeadTo ?? r.Target.Centre)))
        {
            other.Add(
                request with
                {
                    Target = Moved(Within(request.Target, window)),
                    KeyTarget = request.KeyTarget is { } key ? Moved(Within(key, window)) : null,
                    Within = Moved(Within(request.Within ?? window, window)),
                    LeadTo = request.LeadTo + by,
                    NotOver = request.NotOver is { } floor ? Moved(floor) : null,
                });
        }

        other.keepOuts.AddRange(keepOuts.Where(window.Overlaps).Select(Moved));
        other.notShown.AddRange(notShown);

        PaperBox Moved(PaperBox box) => box.Moved(by.X, by.Y);
    }

    private static PaperBox Within(PaperBox box, PaperBox window) => new(
        Math.Clamp(box.Left, window.Left, window.Right), Math.Clamp(box.Top, window.Top, window.Bottom),
        Math.Clamp(box.Right, window.Left, window.Right), Math.Clamp(box.Bottom, window.Top, window.Bottom));

    /// <summary>
    /// Draws all labels into the scene, within <paramref name="area"/>. Call once, when everything else of the views is drawn.
    /// </summary>
    /// <param name="keys">How many key numbers other pages of the sheet have given out.</param>
    public IReadOnlyList<LabelResult> Place(PaperBox area, int keys = 0)
    {
        var obstacles = new DrawnObstacles(scene.Items, DrawingStandard.Iso.HeavyFrom, area);
        foreach (var box in keepOuts)
        {
            obstacles.AddKeepOut(box);
        }

        var results = new List<LabelResult>();
        foreach (var request in requests.OrderByDescending(r => r.Priority))
        {
            var result = Best(request, request.Lines, area, obstacles, request.MayLead) ?? Shorter(request, area, obstacles);
            if (result is null && !request.Optional)
            {
                string number = FormattableString.Invariant($"k{keys + 1}");
                result = Best(Numbered(request), [number], area, obstacles, mayLead: true) is { } placed
                    ? placed with { Request = request }
                    : null;
                if (result is not null)
                {
                    keys++;
                    result = result with { Outcome = LabelOutcome.Keyed, KeyNumber = number };
                }
            }

            if (result is null && request is { Optional: true, ListedUnder: { } under })
            {
                NotShown(under, string.Join(' ', request.Lines));
            }

            results.Add(result ?? new LabelResult(request, LabelOutcome.Unplaced, null, null));
        }

        return results;
    }

    /// <summary>A number needs less paper than the words do: it may stand where they may not.</summary>
    private static LabelRequest Numbered(LabelRequest request) => request with
    {
        Target = request.KeyTarget ?? request.Target,
        KeyTarget = null,
        Positions = request.KeyTarget is null ? request.Positions : [LabelPosition.Inside],
        SmallestCapHeight = Math.Min(request.SmallestCapHeight, DrawingStandard.Iso.TagHeight),
    };

    private LabelResult? Shorter(LabelRequest request, PaperBox area, DrawnObstacles obstacles)
        => request.Short is { } text
            ? Best(request with { SmallestCapHeight = DrawingStandard.Iso.TagHeight }, [text], area, obstacles, request.MayLead)
            : null;

    /// <summary>At its target when it is clear there; else where it reads best, at the target or led away.</summary>
    private LabelResult? Best(LabelRequest request, IReadOnlyList<string> lines, PaperBox area, DrawnObstacles obstacles, bool mayLead)
    {
        var near = AtTarget(request, lines, area, obstacles);
        var led = mayLead && near?.Cost is not 0 ? WithLeader(request, lines, area, obstacles) : null;
        if (led is { } far && !(near?.Cost <= far.Cost))
        {
            return DrawLed(request, far, obstacles);
        }

        return near is { } found && !(request.Optional && found.Cost > MostForOptional)
            ? Draw(request, found.Shape, found.Box, obstacles, LabelOutcome.AtTarget)
            : null;
    }

    private static Spot? AtTarget(LabelRequest request, IReadOnlyList<string> lines, PaperBox area, DrawnObstacles obstacles)
    {
        Spot? best = null;
        foreach (var shape in Shapes(request, lines))
        {
            foreach (var box in Candidates.At(request, shape.Width, shape.Height))
            {
                if (!area.Holds(box) || request.Within is { } within && !within.Holds(box) || !obstacles.IsFree(box))
                {
                    continue;
                }

                double cost = obstacles.ThinCuts(box) * (request.Tag == TagShape.None ? CutCost : HideCost);
                if (cost == 0)
                {
                    return new Spot(0, shape, box, box.Centre);
                }

                if (best is null || cost < best.Cost)
                {
                    best = new Spot(cost, shape, box, box.Centre);
                }
            }
        }

        return best;
    }

    private static IEnumerable<LabelShape> Shapes(LabelRequest request, IReadOnlyList<string> lines)
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

    private Spot? WithLeader(LabelRequest request, IReadOnlyList<string> lines, PaperBox area, DrawnObstacles obstacles)
    {
        if (leaderSearches++ >= MostLeaderSearches)
        {
            return null;
        }

        var shape = new LabelShape(request, lines, request.SmallestCapHeight, false);
        var to = request.LeadTo ?? request.Target.Centre;
        Spot? best = null;
        for (double far = LeaderStep; far <= LongestLeader && !(best?.Cost <= far); far += LeaderStep)
        {
            for (int i = 0; i < LeaderDirections; i++)
            {
                var (sin, cos) = Math.SinCos(2 * Math.PI * i / LeaderDirections);
                var centre = new PaperPoint(to.X + (cos * (far + (shape.Width / 2))), to.Y + (sin * (far + (shape.Height / 2))));
                var box = PaperBox.Around(centre, shape.Width, shape.Height);
                var from = new PaperPoint(Math.Clamp(to.X, box.Left, box.Right), Math.Clamp(to.Y, box.Top, box.Bottom));
                if (!area.Holds(box)
                    || request.NotOver?.Overlaps(box) == true
                    || !obstacles.IsFree(box)
                    || (request.KeyTarget is not null && obstacles.ThinCuts(box) > 0)
                    || !obstacles.LeaderIsFree(from, to))
                {
                    continue;
                }

                double cost = far + (obstacles.ThinCuts(box) * (request.Tag == TagShape.None ? CutCost : HideCost));
                if (best is null || cost < best.Cost)
                {
                    cost += (obstacles.LeadersCrossed(from, to) * CrossedLeaderCost) + (obstacles.Crossings(from, to) * CrossedLineCost);
                }

                if (best is null || cost < best.Cost)
                {
                    best = new Spot(cost, shape, box, from);
                }
            }
        }

        return best;
    }

    private LabelResult DrawLed(LabelRequest request, Spot place, DrawnObstacles obstacles)
    {
        if (request.Target.Holds(place.Box))
        {
            return Draw(request, place.Shape, place.Box, obstacles, LabelOutcome.AtTarget);
        }

        var to = request.LeadTo ?? request.Target.Centre;
        scene.Line(place.From, to, new Pen(LeaderPen), Layers.Leader, request.Group, Band.Annotation);
        scene.Circle(to, LeaderDot / 2, new Pen(LeaderDot / 2), Layers.Leader, request.Group, Band.Annotation);
        obstacles.AddLeader(place.From, to);
        return Draw(request, place.Shape, place.Box, obstacles, LabelOutcome.WithLeader);
    }

    private LabelResult Draw(LabelRequest request, LabelShape shape, PaperBox box, DrawnObstacles obstacles, LabelOutcome outcome)
    {
        shape.Draw(scene, box);
        obstacles.AddText(box);
        return new LabelResult(request, outcome, box, null);
    }

    /// <param name="Cost">0 is clear and at the target; else in mm of leader that it is as bad as.</param>
    /// <param name="From">Where a leader leaves the label.</param>
    private sealed record Spot(double Cost, LabelShape Shape, PaperBox Box, PaperPoint From);
}
