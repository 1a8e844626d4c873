using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax;
using Floorplan.Model.Openings;
using Floorplan.Model.Shells;
using Floorplan.Sizing.Frames;

namespace Floorplan.Checks.Rules.Shell;

/// <summary>The rectangle of one hole on its wall: along the wall and in height, in plan coordinates.</summary>
/// <param name="Tolerance">Overlaps up to this are touching.</param>
internal sealed record FrameHole(Length From, Length To, Length Bottom, Length Top, Length Tolerance)
{
    public static FrameHole Of(Opening opening, Length tolerance)
    {
        var (a, b) = opening.Wall is Side.North or Side.South ? (opening.Start.X, opening.End.X) : (opening.Start.Y, opening.End.Y);
        return new FrameHole(Length.Min(a, b), Length.Max(a, b), opening.Sill, opening.Sill + opening.Height, tolerance);
    }

    /// <summary>As it is cut, frame and all, from the datum of its wall.</summary>
    public static FrameHole Of(CutOut cut) => new(cut.Along, cut.Right, cut.Bottom, cut.Top, Length.Zero);

    /// <summary>How far the hole must move to be clear of a member; null when it is.</summary>
    public FrameCut? Into(FrameMember member)
    {
        var along = Length.Min(To, member.To) - Length.Max(From, member.From);
        var up = Length.Min(Top, member.Top) - Length.Max(Bottom, member.Bottom);
        if (along <= Tolerance || up <= Tolerance)
        {
            return null;
        }

        bool upright = member.Part is FramePart.Post or FramePart.Casting or FramePart.WheelArch;
        return new FrameCut(upright
            ? Length.Min(To - member.From, member.To - From)
            : Length.Min(Top - member.Bottom, member.Top - Bottom));
    }

    /// <summary>Wall left between hole and member along the wall or in height, whichever is more; zero when they touch.</summary>
    public Length Gap(FrameMember member)
    {
        var along = Length.Max(member.From - To, From - member.To);
        var up = Length.Max(member.Bottom - Top, Bottom - member.Top);
        return Length.Max(Length.Zero, Length.Max(along, up));
    }

    /// <summary>Wall left between two holes along the wall or in height, whichever is more; below zero when they overlap.</summary>
    public Length Gap(FrameHole other) => Length.Max(
        Length.Max(other.From - To, From - other.To),
        Length.Max(other.Bottom - Top, Bottom - other.Top));

    public FrameHole Grown(Length by, Length below)
        => this with { From = From - by, To = To + by, Bottom = Bottom - below, Top = Top + by };
}

/// <summary>A cut into the frame, as far as the hole must move or shrink to be clear.</summary>
internal sealed record FrameCut(Length By);
