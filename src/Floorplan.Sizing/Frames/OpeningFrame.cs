using Floorplan.Language.Quantities;

namespace Floorplan.Sizing.Frames;

/// <summary>The frame of one hole, mitred at its corners; without a sill its posts stand square on the bottom rail or the slab.</summary>
/// <param name="Width">Over the outside of the posts.</param>
/// <param name="Height">From the foot to the top of the head.</param>
public sealed record OpeningFrame(SteelSection Section, Length Width, Length Height, bool HasSill)
{
    /// <summary>Its pieces, as sawn. Lengths are over the long points.</summary>
    public IEnumerable<FramePiece> Pieces
    {
        get
        {
            var end = HasSill ? EndCut.Mitre : EndCut.Square;
            yield return new FramePiece("head", Section, Width, EndCut.Mitre, EndCut.Mitre);
            yield return new FramePiece("post", Section, Height, EndCut.Mitre, end);
            yield return new FramePiece("post", Section, Height, EndCut.Mitre, end);
            if (HasSill)
            {
                yield return new FramePiece("sill", Section, Width, EndCut.Mitre, EndCut.Mitre);
            }
        }
    }
}

/// <summary>One piece to saw.</summary>
/// <param name="Part">What it is in its frame: <c>head</c>, <c>post</c>, <c>sill</c>.</param>
/// <param name="Length">Over the long points.</param>
public sealed record FramePiece(string Part, SteelSection Section, Length Length, EndCut Top, EndCut Foot)
{
    /// <summary>In kg, of the length over the long points; a mitre takes a little off.</summary>
    public double Kilograms => Length.Metres * Section.MassPerMetre;
}

public enum EndCut
{
    Square,

    /// <summary>45 degrees.</summary>
    Mitre,
}
