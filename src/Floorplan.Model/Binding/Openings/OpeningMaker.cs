using Floorplan.Language.Quantities;
using Floorplan.Model.Binding.Names;
using Floorplan.Model.Binding.Placing;
using Floorplan.Model.Openings;
using Floorplan.Model.Rooms;
using Floorplan.Model.Shapes;
using Floorplan.Model.Stations;

namespace Floorplan.Model.Binding.Openings;

/// <summary>Cuts an opening at the place that was found for it, and hangs its leaf.</summary>
internal sealed class OpeningMaker(IReadOnlyDictionary<string, Room> rooms, Reports reports)
{
    /// <summary>Null, with a report, when it does not lie within one stretch of its wall.</summary>
    public Opening? Make(OpeningToPlace opening, Placeable placed)
    {
        var draft = opening.Draft;
        if (placed.Failed || placed.Start(opening.Wall.Along) is not { } from)
        {
            return null;
        }

        var to = from + opening.Wall.Width;
        if (StretchFor(opening, from, to) is not { } stretch)
        {
            return null;
        }

        var beyond = opening.Beyond is null ? null : rooms[opening.Beyond.Id];
        ReportAboveCeiling(opening, rooms[opening.Room.Id]);
        return new Opening
        {
            Id = draft.Id,
            Label = draft.Label,
            Kind = draft.Kind,
            RoomA = rooms[opening.Room.Id],
            RoomB = beyond,
            Wall = stretch.Side,
            Width = draft.Width,
            Height = draft.Height,
            Sill = draft.Sill ?? UsualSills.Of(draft.Kind),
            Start = stretch.Middle(from),
            End = stretch.Middle(to),
            Reveal = stretch.Through(from, to).ToPolygon(),
            InShell = beyond is null,
            Swing = SwingOf(opening, stretch, from, to),
            ClosesItself = draft.ClosesItself,
            OpensFromInside = draft.OpensFromInside,
            Steps = draft.Steps,
            Ramp = draft.Ramp,
            Guard = draft.Guard,
            Frame = draft.Frame,
            FrameNote = draft.FrameNote,
            Radius = draft.Radius,
            Span = draft.Span,
        };
    }

    private void ReportAboveCeiling(OpeningToPlace opening, Room room)
    {
        var over = (opening.Draft.Sill ?? UsualSills.Of(opening.Draft.Kind)) + opening.Draft.Height - room.CeilingHeight;
        if (over > Length.Zero)
        {
            reports.Error(
                "opening-above-ceiling",
                $"`{opening.Draft.Id}` reaches {reports.Text(over)} above the finished ceiling, which is at "
                    + $"{reports.Text(room.CeilingHeight)}",
                opening.Draft.Span,
                "make it lower, or give it a lower sill");
        }
    }

    private WallStretch? StretchFor(OpeningToPlace opening, Length from, Length to)
    {
        foreach (var stretch in opening.Wall.Stretches)
        {
            if (stretch.From <= from && stretch.To >= to)
            {
                return stretch;
            }
        }

        var nearest = opening.Wall.Stretches.MinBy(s => Math.Abs((s.From + s.To - from - to).Nanometres));
        bool low = nearest.From - from > to - nearest.To;
        var over = low ? nearest.From - from : to - nearest.To;
        var end = low ? opening.Wall.Along.Low() : opening.Wall.Along.High();
        reports.Error(
            "opening-beyond-wall",
            $"`{opening.Draft.Id}` reaches {reports.Text(over)} beyond the {end.Word()} end of its wall, which is "
                + $"{reports.Text(nearest.Run)} long",
            opening.Draft.Span,
            "move it along the wall or make it narrower");
        return null;
    }

    private Swing? SwingOf(OpeningToPlace opening, WallStretch stretch, Length from, Length to)
    {
        var draft = opening.Draft;
        if (draft.Swing is null && draft.SwingsTo is null && draft.Kind != OpeningKind.Door)
        {
            return null;
        }

        if (!TryRoomSwungInto(opening, out bool towardsBeyond))
        {
            return null;
        }

        var into = towardsBeyond ? opening.Beyond : opening.Room;
        bool hingeLow = draft.Hinge is { } hinge
            ? hinge == opening.Wall.Along.Low()
            : from - stretch.From <= stretch.To - to;
        if (draft.Hinge is { } given && AxisWords.Of(given) != opening.Wall.Along)
        {
            reports.Error(
                "hinge-not-on-wall",
                $"`{draft.Id}` is in a wall that runs {opening.Wall.Along.Phrase()}, so it has no {given.Word()} end",
                draft.Span,
                $"write `hinge {opening.Wall.Along.Low().Word()}` or `hinge {opening.Wall.Along.High().Word()}`");
        }

        return SwingShape.Of(
            draft.Swing ?? SwingKind.Hinged,
            stretch,
            from,
            to,
            towardsBeyond ? stretch.Side : stretch.Side.Opposite(),
            into is null ? null : rooms[into.Id],
            hingeLow);
    }

    private bool TryRoomSwungInto(OpeningToPlace opening, out bool towardsBeyond)
    {
        towardsBeyond = true;
        if (opening.Draft.SwingsTo is not { } to)
        {
            return true;
        }

        bool outward = to.Id is "out" or NameTable.Outside;
        if ((outward && opening.Beyond is null) || to.Id == opening.Beyond?.Id)
        {
            towardsBeyond = true;
            return true;
        }

        towardsBeyond = false;
        if (to.Id == opening.Room.Id || (to.Id == "in" && opening.Beyond is null))
        {
            return true;
        }

        string second = opening.Beyond?.Id ?? "out";
        reports.Error(
            "swings-elsewhere",
            $"`{opening.Draft.Id}` cannot swing {(outward || to.Id == "in" ? to.Id : $"into `{to.Id}`")}: it is between "
                + $"`{opening.Room.Id}` and {(opening.Beyond is null ? "outside" : $"`{opening.Beyond.Id}`")}",
            to.Span,
            $"write `swings {opening.Room.Id}` or `swings {second}`");
        return false;
    }
}
