using System.Collections.Concurrent;
using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Scene;

namespace Floorplan.Drawing.Sheets.Keeping;

/// <summary>The sheets of one plan as they were drawn last, so that a sheet that an edit does not touch is not laid out again.</summary>
public sealed class KeptSheets
{
    private readonly ConcurrentDictionary<string, KeptSheet> sheets = new();
    private int kept;
    private int drawn;

    /// <summary>How many sheets were taken over.</summary>
    public int Kept => kept;

    /// <summary>How many sheets were laid out.</summary>
    public int Drawn => drawn;

    internal (IReadOnlyList<SheetScene> Pages, NotDrawn? Reason) Compose(SheetContent content)
    {
        if (sheets.TryGetValue(content.Name, out var before) && before.For(content) is { } pages)
        {
            Interlocked.Increment(ref kept);
            return (pages, null);
        }

        Interlocked.Increment(ref drawn);
        var (laid, reason, made) = KeptSheet.Draw(content);
        sheets[content.Name] = made;
        return (laid, reason);
    }
}
