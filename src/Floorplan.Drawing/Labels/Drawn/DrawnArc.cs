using Floorplan.Drawing.Scene;

namespace Floorplan.Drawing.Labels.Drawn;

/// <summary>An arc as labels look at it: as chords, worked out when a label first comes near.</summary>
internal sealed class DrawnArc(ArcItem arc)
{
    /// <summary>Chords a full turn.</summary>
    private const int PerTurn = 32;

    private (PaperBox Around, DrawnLine Chord)[]? chords;

    public (PaperBox Around, DrawnLine Chord)[] Chords => chords ??= [.. Cut().DistinctBy(c => c.Chord)];

    private IEnumerable<(PaperBox Around, DrawnLine Chord)> Cut()
    {
        int count = Math.Max(1, (int)Math.Ceiling(Math.Abs(arc.EndDegrees - arc.StartDegrees) / 360 * PerTurn));
        for (int i = 0; i < count; i++)
        {
            var (from, to) = (At(i, count), At(i + 1, count));
            yield return (PaperBox.Of(from, to), DrawnLine.Rounded(from, to, arc.Pen.Width));
        }
    }

    private PaperPoint At(int i, int count) => arc.At(arc.StartDegrees + ((arc.EndDegrees - arc.StartDegrees) * i / count));
}
