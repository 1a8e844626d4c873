using Floorplan.Drawing.Labels;
using Floorplan.Drawing.Scene;

namespace Floorplan.Drawing.Sheets.Keeping;

/// <summary>How much a sheet held at one moment of its drawing. What it holds only grows, so counts are enough.</summary>
internal sealed class DrawnSoFar
{
    private static readonly Band[] bands = Enum.GetValues<Band>();

    private readonly SceneBuilder scene;
    private readonly LabelPlacer? labels;
    private readonly int[] items;
    private readonly int hatches;
    private readonly int requests;
    private readonly int keepOuts;
    private readonly int areas;
    private readonly int notShown;

    /// <param name="labels">Null where no labels are asked for.</param>
    public DrawnSoFar(SceneBuilder scene, LabelPlacer? labels)
    {
        this.scene = scene;
        this.labels = labels;
        items = [.. bands.Select(b => scene.In(b).Count)];
        hatches = scene.Hatches.Count;
        requests = labels?.Requests.Count ?? 0;
        keepOuts = labels?.KeepOuts.Count ?? 0;
        areas = labels?.Areas.Count ?? 0;
        notShown = labels?.AllNotShown.Count ?? 0;
    }

    /// <summary>A sheet that holds as much, to be drawn on from here.</summary>
    public (SceneBuilder Scene, LabelPlacer Labels) Again()
    {
        var again = new SceneBuilder(scene.Denominator);
        foreach (var band in bands)
        {
            for (int i = 0; i < items[(int)band]; i++)
            {
                again.Add(scene.In(band)[i], band);
            }
        }

        for (int i = 0; i < hatches; i++)
        {
            var hatch = scene.Hatches[i];
            again.Hatch(hatch.Rings, hatch.Style, hatch.Pen, hatch.Layer, hatch.Group);
        }

        var placer = new LabelPlacer(again);
        for (int i = 0; i < requests; i++)
        {
            placer.Add(labels!.Requests[i]);
        }

        for (int i = 0; i < keepOuts; i++)
        {
            placer.KeepOut(labels!.KeepOuts[i]);
        }

        for (int i = 0; i < areas; i++)
        {
            placer.Add(labels!.Areas[i]);
        }

        for (int i = 0; i < notShown; i++)
        {
            placer.NotShown(labels!.AllNotShown[i].Of, labels.AllNotShown[i].Words);
        }

        return (again, placer);
    }

    /// <summary>Whether what was added from here up to <paramref name="end"/> was added from <paramref name="other"/> on as well.</summary>
    public bool SameAdded(DrawnSoFar end, DrawnSoFar other, DrawnSoFar otherEnd, FigurePairs figures)
    {
        foreach (var band in bands)
        {
            int b = (int)band;
            if (!Same(scene.In(band), items[b], end.items[b], other.scene.In(band), other.items[b], otherEnd.items[b], SameDrawing.Item))
            {
                return false;
            }
        }

        return Same(scene.Hatches, hatches, end.hatches, other.scene.Hatches, other.hatches, otherEnd.hatches, SameDrawing.Hatch)
            && (labels is null || other.labels is null || SameLabels(labels, end, other, other.labels, otherEnd, figures));
    }

    private bool SameLabels(
        LabelPlacer mine, DrawnSoFar end, DrawnSoFar other, LabelPlacer its, DrawnSoFar otherEnd, FigurePairs figures) =>
        Same(
            mine.Requests, requests, end.requests, its.Requests, other.requests, otherEnd.requests,
            (a, b) => SameDrawing.Label(a, b) && figures.Add(a.Figures, b.Figures))
        && Same(mine.KeepOuts, keepOuts, end.keepOuts, its.KeepOuts, other.keepOuts, otherEnd.keepOuts, (a, b) => a == b)
        && Same(mine.Areas, areas, end.areas, its.Areas, other.areas, otherEnd.areas, SameDrawing.Area)
        && Same(mine.AllNotShown, notShown, end.notShown, its.AllNotShown, other.notShown, otherEnd.notShown, (a, b) => a == b);

    private static bool Same<T>(
        IReadOnlyList<T> a, int from, int to, IReadOnlyList<T> b, int otherFrom, int otherTo, Func<T, T, bool> same)
    {
        if (to - from != otherTo - otherFrom)
        {
            return false;
        }

        for (int i = 0; i < to - from; i++)
        {
            if (!same(a[from + i], b[otherFrom + i]))
            {
                return false;
            }
        }

        return true;
    }
}
