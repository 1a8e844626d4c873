using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Labels.Drawn;
using Floorplan.Drawing.Scene;

namespace Floorplan.Drawing.Labels;

/// <summary>
/// Finds a place for every text of a sheet so that no two texts overlap and no heavier line or arrowhead cuts one. What is already
/// in the scene counts: fixed texts, heavy lines and dark areas are avoided always, thin lines where possible. Same input, same places.
/// </summary>
public sealed class LabelPlacer(SceneBuilder scene)
{
    private const double LeaderPen = 0.18;
    private const double LeaderDot = 0.45;

    /// <summary>So often all labels are placed again where some found no good place; own choice.</summary>
    private const int MostRounds = 3;

    private readonly List<LabelRequest> requests = [];
    private readonly List<PaperBox> keepOuts = [];
    private readonly List<LabelArea> areas = [];
    private readonly List<(string Of, string Words)> notShown = [];

    /// <summary>What was asked for so far, in that order.</summary>
    internal IReadOnlyList<LabelRequest> Requests => requests;

    internal IReadOnlyList<PaperBox> KeepOuts => keepOuts;

    internal IReadOnlyList<LabelArea> Areas => areas;

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

    /// <summary>Texts of other things had better not stand here.</summary>
    public void Add(LabelArea area) => areas.Add(area);

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
                    OtherTargets = [.. request.OtherTargets.Where(window.Holds).Select(Moved)],
                    KeyTarget = request.KeyTarget is { } key ? Moved(Within(key, window)) : null,
                    Within = Moved(Within(request.Within ?? window, window)),
                    LeadTo = request.LeadTo + by,
                    NotOver = request.NotOver is { } floor ? Moved(floor) : null,
                });
        }

        other.keepOuts.AddRange(keepOuts.Where(window.Overlaps).Select(Moved));
        other.areas.AddRange(areas.Select(a => a with { Rings = [.. a.Rings.Select(r => r.Select(p => p + by).ToArray())] }));
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
    /// <param name="hasKey">False where no key stands beside the view: a number is the last resort then.</param>
    public IReadOnlyList<LabelResult> Place(PaperBox area, int keys = 0, bool hasKey = true)
    {
        var index = new PaperIndex<LabelArea>(area);
        foreach (var thing in areas)
        {
            index.Add(PaperBox.Of(thing.Rings), thing);
        }

        IReadOnlyList<LabelRequest> order = [.. requests.OrderByDescending(r => r.Priority)];
        var best = Round();
        for (int more = 0; more < MostRounds && best.Crowded.Count > 0; more++)
        {
            // What found no good place gets its place first, and others stand round it.
            order = [.. best.Crowded, .. order.Where(r => !best.Crowded.Contains(r))];
            var next = Round();
            if (next.Crowded.Count >= best.Crowded.Count)
            {
                break;
            }

            best = next;
        }

        foreach (var (shape, box, from, to) in best.Found)
        {
            if (from is { } start)
            {
                scene.Line(start, to, new Pen(LeaderPen), Layers.Leader, shape.Request.Group, Band.Annotation);
                scene.Circle(to, LeaderDot / 2, new Pen(LeaderDot / 2), Layers.Leader, shape.Request.Group, Band.Annotation);
            }

            shape.Draw(scene, box);
        }

        foreach (var lost in best.Results.Where(r => r.Outcome == LabelOutcome.Unplaced && r.Request.Optional).Select(r => r.Request))
        {
            if (lost.ListedUnder is { } under)
            {
                NotShown(under, string.Join(' ', lost.Lines));
            }
        }

        return best.Results;

        LabelRound Round()
        {
            var obstacles = new DrawnObstacles(scene.Items, DrawingStandard.Iso.HeavyFrom, area);
            foreach (var box in keepOuts)
            {
                obstacles.AddKeepOut(box);
            }

            var round = new LabelRound(area, obstacles, index, keys, hasKey);
            foreach (var request in order)
            {
                round.Place(request);
            }

            return round;
        }
    }
}
