using System.Runtime.InteropServices;
using Floorplan.Drawing.Scene;

namespace Floorplan.Drawing.Labels.Drawn;

/// <summary>Things on paper by place, in square cells, so that a label looks only at its neighbours.</summary>
internal sealed class PaperIndex<T>
{
    private const double SmallestCell = 10;

    /// <summary>Cells along the longer side of an area of any size.</summary>
    private const int MostAlong = 64;

    /// <summary>A thing over more cells than this is kept in one list that every search sees.</summary>
    private const int MostCells = 400;

    private readonly PaperBox area;
    private readonly double cell;
    private readonly List<int>?[,] cells;
    private readonly List<Entry> things = [];
    private readonly List<int> wide = [];
    private readonly List<T> near = [];
    private int search;

    /// <param name="area">Where things are looked for. What lies outside it is kept in the cells of its rim.</param>
    public PaperIndex(PaperBox area)
    {
        this.area = area;
        cell = Math.Max(SmallestCell, Math.Max(area.Width, area.Height) / MostAlong);
        cells = new List<int>?[Across(area.Width, MostAlong) + 1, Across(area.Height, MostAlong) + 1];
    }

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
                (cells[x, y] ??= []).Add(index);
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
                if (cells[x, y] is { } list)
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
        (
            Across(box.Left - area.Left, cells.GetLength(0) - 1), Across(box.Top - area.Top, cells.GetLength(1) - 1),
            Across(box.Right - area.Left, cells.GetLength(0) - 1), Across(box.Bottom - area.Top, cells.GetLength(1) - 1));

    private int Across(double distance, int most) => (int)Math.Clamp(distance / cell, 0, most);

    private struct Entry
    {
        public required PaperBox Box { get; init; }

        public required T Thing { get; init; }

        /// <summary>The last search that took it: a thing lies in several cells.</summary>
        public int SeenIn { get; set; }
    }
}
