using Floorplan.Drawing.Labels.Drawn;
using Floorplan.Drawing.Scene;

namespace Floorplan.Drawing.Labels;

/// <summary>Where one label may stand, and its leader may run, so that no reader takes it for a text of another room or thing.</summary>
internal sealed class LabelBounds
{
    /// <summary>A text may reach this far over the edge of another room, and a place may be this far outside its own; mm.</summary>
    private const double Unseen = 0.4;

    private readonly PaperIndex<LabelArea> areas;
    private readonly LabelRequest request;

    /// <summary>The rooms of the place that it points to; null where that is in none.</summary>
    private readonly List<LabelArea>? own;

    public LabelBounds(PaperIndex<LabelArea> areas, LabelRequest request)
    {
        (this.areas, this.request) = (areas, request);
        var at = request.LeadTo ?? request.Target.Centre;
        var near = areas.Near(PaperBox.Around(at, 2 * Unseen, 2 * Unseen)).Where(a => a.Kind == LabelAreaKind.Room).ToList();
        var holding = near.Where(a => RingShapes.Holds(a.Rings, at)).ToList();
        own = holding.Count > 0 ? holding : near.Where(a => RingShapes.Distance(a.Rings, at) <= Unseen).ToList() is { Count: > 0 } beside
            ? beside
            : null;
    }

    public bool Hold(PaperBox box)
    {
        var inner = box.Grown(-Unseen);
        foreach (var area in areas.Near(inner))
        {
            if (IsStrange(area) && RingShapes.Touches(area.Rings, inner))
            {
                return false;
            }
        }

        return true;
    }

    public bool HoldLeader(PaperPoint from, PaperPoint to)
    {
        foreach (var area in areas.Near(PaperBox.Of(from, to)))
        {
            if (area.Kind == LabelAreaKind.Room && IsStrange(area) && RingShapes.AreCutBy(area.Rings, from, to))
            {
                return false;
            }
        }

        return true;
    }

    private bool IsStrange(LabelArea area) => area.Kind == LabelAreaKind.Room
        ? own is not null && !own.Contains(area)
        : request.OffOthers && area.Group != request.Group && !RingShapes.Touches(area.Rings, request.Target);
}
