using System.Globalization;
using System.Text;
using Floorplan.Drawing.Scene;
using Floorplan.Drawing.Svg;
using Floorplan.Sizing.Simulation.Line;

namespace Floorplan.Drawing.Moving;

/// <summary>The elements that move and the rules that move them.</summary>
internal sealed class MovingParts(long from, long to)
{
    /// <summary>Blank, then 0 to 9, then the colon of the clock.</summary>
    private const string Figures = " 0123456789:";

    private readonly StringBuilder rules = new();
    private readonly StringBuilder elements = new();
    private int count;

    public string Elements => Reel() + elements;

    /// <param name="seconds">How long the whole stretch plays.</param>
    public string Style(string seconds) =>
        $".m{{animation-duration:{seconds}s;animation-timing-function:linear;animation-iteration-count:infinite}}\n"
        + ".n{animation-timing-function:step-end}\n"
        + "@media (prefers-reduced-motion:reduce){.m{animation:none!important}}\n"
        + "@media print{.m{animation:none!important}}\n" + rules;

    /// <param name="start">Where it stands where nothing moves.</param>
    public void Mover(Keyframes frames, PaperPoint start, string drawn, string what)
    {
        string name = Name();
        rules.Append(frames.Rule(name)).Append('.').Append(name).Append("{animation-name:").Append(name).Append("}\n");
        elements.Append("<g class=\"m ").Append(name).Append(' ').Append(what).Append("\" transform=\"translate(")
            .Append(SvgNumber.Text(Math.Round(start.X, 2))).Append(' ').Append(SvgNumber.Text(Math.Round(start.Y, 2))).Append(")\">\n")
            .Append(drawn).Append("</g>\n");
    }

    /// <summary>A number whose figures turn like those of a counter.</summary>
    /// <param name="values">From when it is what, in the order of time.</param>
    /// <param name="at">Top left corner.</param>
    public void Number(IReadOnlyList<(long At, int Value)> values, PaperPoint at, int digits, double larger)
    {
        int first = 0;
        while (first + 1 < values.Count && values[first + 1].At <= from)
        {
            first++;
        }

        for (int digit = 0; digit < digits; digit++)
        {
            int place = digits - 1 - digit;
            Figure(Turns(values, first, v => FigureAt(v, place)), new(at.X + (digit * larger * MovingLook.DigitWidth), at.Y), larger);
        }
    }

    /// <summary><c>1:05</c>, minute by minute, with two figures of hours.</summary>
    public void Clock(PaperPoint at, double larger)
    {
        List<(long At, int Value)> minutes = [];
        for (long minute = from / Ticks.Minute; minute * Ticks.Minute <= to; minute++)
        {
            minutes.Add((minute * Ticks.Minute, (int)minute));
        }

        PaperPoint At(int place) => new(at.X + (place * larger * MovingLook.DigitWidth), at.Y);
        bool isLong = to >= 10 * Ticks.Hour;
        int colon = isLong ? 2 : 1;
        if (isLong)
        {
            Figure(Turns(minutes, 0, m => FigureAt(m / 60, 1)), At(0), larger);
        }

        Figure(Turns(minutes, 0, m => FigureAt(m / 60, 0)), At(colon - 1), larger);
        Figure([(from, Figures.Length - 1)], At(colon), larger);
        Figure(Turns(minutes, 0, m => 1 + (m % 60 / 10)), At(colon + 1), larger);
        Figure(Turns(minutes, 0, m => 1 + (m % 10)), At(colon + 2), larger);
    }

    private IReadOnlyList<(long At, int Figure)> Turns(IReadOnlyList<(long At, int Value)> values, int first, Func<int, int> figure)
    {
        List<(long At, int Figure)> turns = [(from, figure(values[first].Value))];
        for (int i = first + 1; i < values.Count && values[i].At < to; i++)
        {
            if (figure(values[i].Value) is var next && next != turns[^1].Figure)
            {
                turns.Add((values[i].At, next));
            }
        }

        return turns;
    }

    /// <summary>Which of <see cref="Figures"/> stands there; none for noughts in front.</summary>
    private static int FigureAt(int value, int place)
    {
        string text = value.ToString(CultureInfo.InvariantCulture);
        return place < text.Length ? 1 + (text[text.Length - 1 - place] - '0') : 0;
    }

    private void Figure(IReadOnlyList<(long At, int Figure)> turns, PaperPoint at, double larger)
    {
        string start = SvgNumber.Text(-turns[0].Figure * MovingLook.DigitHeight);
        elements.Append(CultureInfo.InvariantCulture, $"<svg x=\"{SvgNumber.Text(at.X)}\" y=\"{SvgNumber.Text(at.Y)}\" ")
            .Append("width=\"").Append(SvgNumber.Text(larger * MovingLook.DigitWidth)).Append("\" height=\"")
            .Append(SvgNumber.Text(larger * MovingLook.DigitHeight)).Append("\" viewBox=\"0 0 ")
            .Append(SvgNumber.Text(MovingLook.DigitWidth)).Append(' ').Append(SvgNumber.Text(MovingLook.DigitHeight)).Append("\">");
        if (turns.Count == 1)
        {
            elements.Append("<use href=\"#reel\" transform=\"translate(0 ").Append(start).Append(")\"/></svg>\n");
            return;
        }

        string name = Name();
        var frames = new Keyframes(from, to);
        foreach (var (time, figure) in turns)
        {
            frames.Add(time, new PaperPoint(0, -figure * MovingLook.DigitHeight));
        }

        rules.Append(frames.Rule(name)).Append('.').Append(name).Append("{animation-name:").Append(name).Append("}\n");
        elements.Append("<use href=\"#reel\" class=\"m n ").Append(name).Append("\" transform=\"translate(0 ").Append(start)
            .Append(")\"/></svg>\n");
    }

    private static string Reel()
    {
        var reel = new StringBuilder("<defs><g id=\"reel\" font-size=\"");
        reel.Append(SvgNumber.Text(Lettering.TextMeasure.FontSize(MovingLook.DigitLetters))).Append("\" text-anchor=\"middle\">");
        for (int i = 1; i < Figures.Length; i++)
        {
            double foot = (i * MovingLook.DigitHeight) + ((MovingLook.DigitHeight + MovingLook.DigitLetters) / 2);
            reel.Append("<text x=\"").Append(SvgNumber.Text(MovingLook.DigitWidth / 2)).Append("\" y=\"").Append(SvgNumber.Text(foot))
                .Append("\">").Append(Figures[i]).Append("</text>");
        }

        return reel.Append("</g></defs>\n").ToString();
    }

    private string Name() => FormattableString.Invariant($"a{count++}");
}
