using System.Runtime.InteropServices;
using Floorplan.Drawing.Scene;

namespace Floorplan.Drawing.Labels;

/// <summary>Things on paper by place, in square cells, so that a label looks only at its neighbours.</summary>
/// <param name="area">Where things are looked for. What lies outside it is kept in the cells of its rim.</param>
internal sealed class PaperIndex<T>(PaperBox area)
{
    private const double SmallestCell = 10;

    /// <summary>Cells along the longer side of an area of any size.</summary>
    private const int MostAlong = 64;

    /// <summary>A thing over more cells than this is kept in one list that every search sees.</summary>
    private const int MostCells = 400;

    private readonly double cell = Math.Max(SmallestCell, Math.Max(area.Width, area.Height) / MostAlong);
    private readonly List<int>?[] cells = new List<int>?[MostAlong * MostAlong];
    private readonly List<Entry> things = [];
    private readonly List<int> wide = [];
    private readonly List<T> near = [];
    private int search;

    public void Add(PaperBox box, T thing)
    {
        int index = things.Count;
        things.Add(new Entry { Box = box, Thing = thing });
        var (left, top, right, bottom) = Cells(box);
        if ((right - left + 1) * (bottom - top + 1) > MostCells)
        {
            wide.Add(index);
            return;
        }

        for (int x = left; x <= right; x++)
        {
            for (int y = top; y <= bottom; y++)
            {
                (cells[(x * MostAlong) + y] ??= []).Add(index);
            }
        }
    }

    /// <summary>The things whose box touches <paramref name="box"/>. The list holds until the next search.</summary>
    public List<T> Near(PaperBox box)
    {
        search++;
        near.Clear();
        Take(wide, box);
        var (left, top, right, bottom) = Cells(box);
        for (int x = left; x <= right; x++)
        {
            for (int y = top; y <= bottom; y++)
            {
                if (cells[(x * MostAlong) + y] is { } list)
                {
                    Take(list, box);
                }
            }
        }

        return near;
    }

    private void Take(List<int> list, PaperBox box)
    {
        var entries = CollectionsMarshal.AsSpan(things);
        foreach (int index in list)
        {
            ref var entry = ref entries[index];
            if (entry.SeenIn != search && entry.Box.Touches(box))
            {
                entry.SeenIn = search;
                near.Add(entry.Thing);
            }
        }
    }

    private (int Left, int Top, int Right, int Bottom) Cells(PaperBox box) =>
        (Along(box.Left - area.Left), Along(box.Top - area.Top), Along(box.Right - area.Left), Along(box.Bottom - area.Top));

    private int Along(double distance) => (int)Math.Clamp(distance / cell, 0, MostAlong - 1);

    private struct Entry
    {
        public required PaperBox Box { get; init; }

        public required T Thing { get; init; }

        /// <summary>The last search that took it: a thing lies in several cells.</summary>
        public int SeenIn { get; set; }
    }
}
