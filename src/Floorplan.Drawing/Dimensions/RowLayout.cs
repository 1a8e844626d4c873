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

    /// <summary>Kept between a text on the line and the end of its stretch: where the end's stroke rises into it, and where it does not.</summary>
    private const double ClearOfStroke = 1.3;
    private const double ClearOfEnd = 0.6;

    /// <summary>Higher than this is unreadable; the text is then left out of the row, and tables give the place.</summary>
    private const int MostLevels = 7;

    public static double LevelHeight(DrawingStandard standard) => standard.NoteHeight * TextMeasure.LinePitch;

    public static double BaseAbove(DrawingStandard standard) => standard.DimensionTextGap + standard.NoteHeight + TextMargin;

    public static double Above(IReadOnlyList<RowText> texts, DrawingStandard standard) =>
        BaseAbove(standard) + (texts.Select(t => t.Level).DefaultIfEmpty(0).Max() * LevelHeight(standard));

    public static IReadOnlyList<RowText> Texts(DimensionRow row, double denominator, UnitSystem units, DrawingStandard standard)
    {
        Length[] stops = [.. row.Stops.Select(s => s.Along).Distinct().Order()];
        var stretches = row.Form switch
        {
            DimensionForm.Overall => [(stops[0], stops[^1])],
            DimensionForm.Running => stops.Skip(1).Select(s => (stops[0], s)).ToArray(),
            _ => stops.Zip(stops.Skip(1)).ToArray(),
        };
        var taken = new List<(double Left, double Right)>[MostLevels + 1];
        for (int i = 0; i < taken.Length; i++)
        {
            taken[i] = [];
        }

        var texts = new List<RowText>();
        foreach (var (from, to) in stretches.OrderByDescending(s => Fits(s.Item1, s.Item2)).ThenBy(s => s.Item2))
        {
            string text = Text(from, to);
            double width = TextMeasure.Width(text, standard.NoteHeight);
            double a = from.Millimetres / denominator;
            double b = to.Millimetres / denominator;
            bool running = row.Form == DimensionForm.Running;
            double middle = running ? b : (a + b) / 2;
            bool fits = !running && Fits(from, to);
            var place = fits ? (Shift: OnLine(row.Side, width, b - a), Level: 0) : FindLevel(taken, middle, width, 1);
            if (place is not { } found)
            {
                continue;
            }

            taken[found.Level].Add((middle + found.Shift - (width / 2) - (TextMargin / 2), middle + found.Shift + (width / 2) + (TextMargin / 2)));
            texts.Add(new RowText(text, from.Millimetres, to.Millimetres, found.Shift, found.Level));
        }

        return texts;

        string Text(Length from, Length to) => LengthText.Dimension(DimensionRounding.Round(to, units) - DimensionRounding.Round(from, units), units);

        bool Fits(Length from, Length to) =>
            TextMeasure.Width(Text(from, to), standard.NoteHeight) + ClearOfStroke + ClearOfEnd <= (to - from).Millimetres / denominator;
    }

    /// <summary>In the middle, or as far off it as keeps clear of the stroke that rises into the stretch: at its left end, or its upper one.</summary>
    private static double OnLine(Side side, double width, double stretch)
    {
        double shift = Math.Max(0, ClearOfStroke - ((stretch - width) / 2));
        return side is Side.North or Side.South ? shift : -shift;
    }

    /// <summary>The lowest level where the text is free, and where its leader passes no text below.</summary>
    private static (double Shift, int Level)? FindLevel(List<(double Left, double Right)>[] taken, double middle, double width, int lowest)
    {
        for (int level = lowest; level < taken.Length; level++)
        {
            bool led = taken.Take(level).Skip(1).All(t => t.TrueForAll(s => middle <= s.Left || middle >= s.Right));
            foreach (double shift in new[] { 0, width / 3, -width / 3 })
            {
                double left = middle + shift - (width / 2);
                if (led && taken[level].TrueForAll(s => left + width <= s.Left || left >= s.Right))
                {
                    return (shift, level);
                }
            }
        }

        return null;
    }
}
