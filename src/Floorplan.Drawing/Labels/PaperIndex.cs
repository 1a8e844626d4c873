using Floorplan.Drawing.Scene;

namespace Floorplan.Drawing.Labels;

/// <summary>Things on paper by place, in square cells, so that a label looks only at its neighbours.</summary>
internal sealed class PaperIndex<T>
{
    private const double Cell = 10;

    /// <summary>A thing over more cells than this is kept in one list that every search sees.</summary>
    private const int MostCells = 400;

    private readonly Dictionary<(int X, int Y), List<int>> cells = [];
    private readonly List<(PaperBox Box, T Thing)> things = [];
    private readonly List<int> wide = [];
    private readonly List<int> seenIn = [];
    private int search;

    public void Add(PaperBox box, T thing)
    {
        int index = things.Count;
        things.Add((box, thing));
        seenIn.Add(0);
        var (left, top, right, bottom) = Cells(box);
        if ((long)(right - left + 1) * (bottom - top + 1) > MostCells)
        {
            wide.Add(index);
            return;
        }

        for (int x = left; x <= right; x++)
        {
            for (int y = top; y <= bottom; y++)
            {
                if (!cells.TryGetValue((x, y), out var list))
                {
                    cells[(x, y)] = list = [];
                }

                list.Add(index);
            }
        }
    }

    /// <summary>True when any thing whose box touches <paramref name="box"/> passes the test.</summary>
    public bool Any(PaperBox box, Func<T, bool> test) => Count(box, test, stopAtFirst: true) > 0;

    public int Count(PaperBox box, Func<T, bool> test, bool stopAtFirst = false)
    {
        search++;
        int count = 0;
        foreach (int index in wide)
        {
            count += Try(index, box, test);
        }

        var (left, top, right, bottom) = Cells(box);
        for (int x = left; x <= right && !(stopAtFirst && count > 0); x++)
        {
            for (int y = top; y <= bottom; y++)
            {
                if (cells.TryGetValue((x, y), out var list))
                {
                    foreach (int index in list)
                    {
                        count += Try(index, box, test);
                        if (stopAtFirst && count > 0)
                        {
                            return count;
                        }
                    }
                }
            }
        }

        return count;
    }

    private int Try(int index, PaperBox box, Func<T, bool> test)
    {
        if (seenIn[index] == search)
        {
            return 0;
        }

        seenIn[index] = search;
        var (other, thing) = things[index];
        bool near = other.Left <= box.Right && box.Left <= other.Right && other.Top <= box.Bottom && box.Top <= other.Bottom;
        return near && test(thing) ? 1 : 0;
    }

    private static (int Left, int Top, int Right, int Bottom) Cells(PaperBox box) =>
        (
            (int)Math.Floor(box.Left / Cell), (int)Math.Floor(box.Top / Cell), (int)Math.Floor(box.Right / Cell),
            (int)Math.Floor(box.Bottom / Cell));
}
