using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Lettering;
using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax;

namespace Floorplan.Drawing.Dimensions;

/// <summary>One dimension of a row: its text, and how high it stands when its stretch is too short for it.</summary>
/// <param name="From">Plan mm along the row.</param>
/// <param name="Shift">Paper mm from the middle of the stretch.</param>
/// <param name="Level">0 on the line, higher ones led up by a thin line.</param>
internal sealed record RowText(string Text, double From, double To, double Shift, int Level);

/// <summary>Staggers the texts of a row so that none overlap.</summary>
internal static class RowLayout
{
    private const double TextMargin = 0.8;

    /// <summary>
    /// Kept between a text on the line and the end of its stretch: where the end's stroke rises into it, and where it does not.
    /// </summary>
    private const double ClearOfStroke = 1.3;
    private const double ClearOfEnd = 0.6;

    /// <summary>Higher than this is unreadable; the text is then left out of the row, and tables give the place. Own choice.</summary>
    private const int MostLevels = 12;

    public static double LevelHeight(DrawingStandard standard) => standard.NoteHeight * TextMeasure.LinePitch;

    public static double BaseAbove(DrawingStandard standard) => standard.DimensionTextGap + standard.NoteHeight + TextMargin;

    public static double Above(IReadOnlyList<RowText> texts, DrawingStandard standard) =>
        BaseAbove(standard) + (texts.Select(t => t.Level).DefaultIfEmpty(0).Max() * LevelHeight(standard));

    public static IReadOnlyList<RowText> Texts(DimensionRow row, double denominator, Tape tape, DrawingStandard standard)
    {
        Length[] stops = [.. row.Stops.Select(s => s.Along).Distinct().Order()];
        var stretches = row.Form switch
        {
            DimensionForm.Overall => [(stops[0], stops[^1])],
            DimensionForm.Running when row.FromEnd => stops.SkipLast(1).Select(s => (stops[^1], s)).ToArray(),
            DimensionForm.Running => stops.Skip(1).Select(s => (stops[0], s)).ToArray(),
            _ => stops.Zip(stops.Skip(1)).ToArray(),
        };
        bool running = row.Form == DimensionForm.Running;
        var printed = stretches.Select(s => (From: s.Item1, To: s.Item2, Length: Measured(s.Item1, s.Item2)))
            .Where(s => s.Length > Length.Zero);
        var onLine = new List<RowText>();
        var raised = new List<Raised>();
        foreach (var (from, to, length) in running ? printed.DistinctBy(s => s.Length) : printed)
        {
            string text = tape.Dimension(length);
            double width = TextMeasure.Width(text, standard.NoteHeight);
            double a = from.Millimetres / denominator;
            double b = to.Millimetres / denominator;
            if (!running && width + ClearOfStroke + ClearOfEnd <= b - a)
            {
                onLine.Add(new RowText(text, from.Millimetres, to.Millimetres, OnLine(row.Side, width, b - a), 0));
            }
            else
            {
                raised.Add(new Raised(text, from.Millimetres, to.Millimetres, running ? b : (a + b) / 2, width));
            }
        }

        return [.. onLine, .. Raise(raised)];

        Length Measured(Length from, Length to)
            => row.Form == DimensionForm.Chain ? tape.Between(from, to) : tape.Round(Length.Abs(to - from));
    }

    /// <summary>
    /// In the middle, or as far off it as keeps clear of the stroke that rises into the stretch: at its left end, or its upper one.
    /// </summary>
    private static double OnLine(Side side, double width, double stretch)
    {
        double shift = Math.Max(0, ClearOfStroke - ((stretch - width) / 2));
        return side is Side.North or Side.South ? shift : -shift;
    }

    /// <summary>Texts of short stretches, led up by lines that pass no other text: the arrangement that finds room for most.</summary>
    private static IReadOnlyList<RowText> Raise(List<Raised> texts)
    {
        double[] anyWay = [0, 1 / 3.0, -1 / 3.0, 0.5, -0.5];
        var fromLeft = Raise(texts, anyWay);
        if (fromLeft.Count == texts.Count)
        {
            return fromLeft;
        }

        // Beginning at its own leader, a text is over the leaders of those to its right, which then all stay below it.
        var fromRight = Raise([.. Enumerable.Reverse(texts)], anyWay);
        var stairs = Raise([.. Enumerable.Reverse(texts)], [0.5]);
        var mirrored = Raise(texts, [-0.5]);
        return new[] { fromLeft, fromRight, stairs, mirrored }.MaxBy(t => t.Count)!;
    }

    /// <param name="shifts">Tried in order, as shares of the text's width.</param>
    private static List<RowText> Raise(List<Raised> texts, double[] shifts)
    {
        var taken = new List<(double Left, double Right)>[MostLevels + 1];
        for (int i = 0; i < taken.Length; i++)
        {
            taken[i] = [];
        }

        var placed = new List<RowText>();
        foreach (var text in texts)
        {
            if (Find(taken, text, shifts) is not { } place)
            {
                continue;
            }

            double middle = text.Middle + place.Shift;
            taken[place.Level].Add((middle - (text.Width / 2) - (TextMargin / 2), middle + (text.Width / 2) + (TextMargin / 2)));
            for (int level = 1; level < place.Level; level++)
            {
                taken[level].Add((text.Middle - (TextMargin / 2), text.Middle + (TextMargin / 2)));
            }

            placed.Add(new RowText(text.Text, text.From, text.To, place.Shift, place.Level));
        }

        return placed;
    }

    /// <summary>The lowest level where the text is free, and where its leader passes no text below.</summary>
    private static (double Shift, int Level)? Find(List<(double Left, double Right)>[] taken, Raised text, double[] shifts)
    {
        for (int level = 1; level < taken.Length; level++)
        {
            if (level > 1 && taken[level - 1].Exists(t => text.Middle > t.Left && text.Middle < t.Right))
            {
                return null;
            }

            foreach (double share in shifts)
            {
                double left = text.Middle + ((share - 0.5) * text.Width);
                if (taken[level].TrueForAll(t => left + text.Width <= t.Left || left >= t.Right))
                {
                    return (share * text.Width, level);
                }
            }
        }

        return null;
    }

    private sealed record Raised(string Text, double From, double To, double Middle, double Width);
}
