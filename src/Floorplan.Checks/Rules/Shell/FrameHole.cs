using Floorplan.Language.Quantities;
using Floorplan.Model.Shells;

namespace Floorplan.Checks.Rules.Shell;

/// <summary>The rectangle of one hole on its wall: along the wall and in height, in plan coordinates.</summary>
/// <param name="Tolerance">Overlaps up to this are touching.</param>
internal sealed record FrameHole(Length From, Length To, Length Bottom, Length Top, Length Tolerance)
{
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
        return new FrameCut(upright ? Length.Min(To - member.From, member.To - From) : Length.Min(Top - member.Bottom, member.Top - Bottom));
    }

    /// <summary>Wall left between hole and member along the wall or in height, whichever is more; zero when they touch.</summary>
    public Length Gap(FrameMember member)
    {
        var along = Length.Max(member.From - To, From - member.To);
        var up = Length.Max(member.Bottom - Top, Bottom - member.Top);
        return Length.Max(Length.Zero, Length.Max(along, up));
    }

    public FrameHole Grown(Length by, Length below) => this with { From = From - by, To = To + by, Bottom = Bottom - below, Top = Top + by };
}

/// <summary>A cut into the frame, as far as the hole must move or shrink to be clear.</summary>
internal sealed record FrameCut(Length By);
