using System.Text;
using Floorplan.Drawing.Scene;
using Floorplan.Drawing.Svg;

namespace Floorplan.Drawing.Moving;

/// <summary>
/// The frames of one thing that moves, as CSS. Times are millionths of the whole stretch, each later than the one before.
/// </summary>
internal sealed class Keyframes(long from, long to)
{
    private const long Whole = 1_000_000;
    private readonly StringBuilder text = new();
    private long last = -1;
    private string lastPlace = "";
    private string waiting = "";
    private long waitingAt;

    /// <summary>As a transform: <c>translate(12.3px,4px)</c>.</summary>
    public static string Place(PaperPoint at)
        => $"translate({SvgNumber.Text(Math.Round(at.X, 2))}px,{SvgNumber.Text(Math.Round(at.Y, 2))}px)";

    public void Add(long at, PaperPoint place)
    {
        string here = Place(place);
        long time = Math.Clamp((long)Math.Round((at - from) / (double)(to - from) * Whole), 0, Whole);

        // Of a rest only the first and the last frame are written.
        if (here == lastPlace)
        {
            (waiting, waitingAt) = (here, time);
            return;
        }

        WriteWaiting();
        Write(time, here);
        lastPlace = here;
    }

    /// <summary>The rule, ended; a thing that never moves has two frames.</summary>
    public string Rule(string name)
    {
        WriteWaiting();
        if (last < Whole)
        {
            Write(Whole, lastPlace);
        }

        return $"@keyframes {name}{{{text}}}\n";
    }

    private void WriteWaiting()
    {
        if (waiting.Length > 0 && waitingAt > last)
        {
            Write(waitingAt, waiting);
        }

        waiting = "";
    }

    private void Write(long time, string place)
    {
        // A jump takes a millionth: two frames at one time would be one.
        time = Math.Max(time, last + 1);
        if (time > Whole)
        {
            return;
        }

        SvgNumber.Append(text, time / 10_000).Append(Fraction(time % 10_000)).Append("%{transform:").Append(place).Append('}');
        last = time;
    }

    private static string Fraction(long part) => part == 0 ? "" : FormattableString.Invariant($".{part:0000}").TrimEnd('0');
}
