using System.Globalization;
using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax.Values;
using Floorplan.Language.Tokens;

namespace Floorplan.Language.Parsing;

/// <content>Lengths, exact to the nanometre.</content>
internal sealed partial class Cursor
{
    private const decimal NmPerMillimetre = Quantities.Length.NanometresPerMillimetre;
    private const decimal NmPerInch = Quantities.Length.NanometresPerInch;

    public bool AtNumber => Kind is TokenKind.Number or TokenKind.Fraction || (Kind is TokenKind.Dash && KindAt(1) is TokenKind.Number or TokenKind.Fraction);

    public LengthSyntax? Length(string what, bool mayBeNegative = false)
    {
        if (!AtNumber)
        {
            Wrong(what, "write a length such as `600`, `60 cm`, `2'-6\"` or `9 in`");
            return null;
        }

        var start = Here;
        bool negative = Kind == TokenKind.Dash;
        if (negative)
        {
            at++;
        }

        decimal? nanometres = Amount();
        if (nanometres is not { } value)
        {
            return null;
        }

        var span = start.To(Before);
        if (Kind is TokenKind.Word && !IsJoiningWord(Current) && OtherKind(Current) is { } kind)
        {
            Error("wrong-unit", $"expected a length, found {KindNames.Of(kind)} (`{source.Content[start.Start..Here.End]}`)", start.To(Here), "lengths are written in mm, cm, m, in or ft");
            return null;
        }

        if (negative && !mayBeNegative)
        {
            Error("negative-length", $"{what} cannot be negative", span);
            return null;
        }

        if (value > Bounds.LongestLength)
        {
            Error("too-long", "this length is over 1 km", span, "check the unit: a bare number is in the plan's `units`");
            return null;
        }

        long whole = (long)Math.Round(value);
        return new LengthSyntax(new Length(negative ? -whole : whole), span);
    }

    /// <summary>Feet, feet and inches, inches, metric or bare; in nanometres.</summary>
    private decimal? Amount()
    {
        if (MixedNumber() is not { } first)
        {
            return null;
        }

        if (Kind == TokenKind.FootMark || IsAny("ft", "feet", "foot"))
        {
            at++;
            return AddInches(first * 12 * NmPerInch);
        }

        if (Kind == TokenKind.InchMark || IsAny("in", "inch", "inches"))
        {
            // `in` is also the word before a room: 400 x 400 in lobby.
            if (Kind == TokenKind.Word && IsWord("in") && KindAt(1) == TokenKind.Word && !IsJoiningWord(TextAt(1)))
            {
                return Bare(first);
            }

            at++;
            return first * NmPerInch;
        }

        decimal? metric = Current switch
        {
            "mm" => NmPerMillimetre,
            "cm" => NmPerMillimetre * 10,
            "m" or "metre" or "metres" or "meter" or "meters" => NmPerMillimetre * 1000,
            _ => null,
        };
        if (metric is null || Kind != TokenKind.Word)
        {
            return Bare(first);
        }

        at++;
        return first * metric;
    }

    /// <summary>A bare number is in the plan's units: millimetres, or feet.</summary>
    private decimal Bare(decimal number) => number * (bareUnits == UnitSystem.Metric ? NmPerMillimetre : 12 * NmPerInch);

    private decimal? AddInches(decimal feet)
    {
        int back = at;
        if (Kind == TokenKind.Dash)
        {
            at++;
        }

        if (Kind is not (TokenKind.Number or TokenKind.Fraction))
        {
            at = back;
            return feet;
        }

        if (MixedNumber() is not { } inches)
        {
            return null;
        }

        bool wordIn = IsAny("in", "inch", "inches") && !(KindAt(1) == TokenKind.Word && !IsJoiningWord(TextAt(1)));
        if (Kind == TokenKind.InchMark || wordIn)
        {
            at++;
            return feet + (inches * NmPerInch);
        }

        at = back;
        return feet;
    }

    /// <summary><c>6</c>, <c>6.5</c>, <c>1/2</c>, <c>6 1/2</c>, <c>6½</c>, <c>6 ½</c>.</summary>
    private decimal? MixedNumber()
    {
        if (Kind == TokenKind.Fraction)
        {
            return Vulgar();
        }

        if (Decimal() is not { } first)
        {
            return null;
        }

        if (Kind == TokenKind.Slash && KindAt(1) == TokenKind.Number)
        {
            return Over(first);
        }

        if (Kind == TokenKind.Fraction)
        {
            return first + Vulgar();
        }

        bool joined = Kind == TokenKind.Dash && KindAt(1) == TokenKind.Number && KindAt(2) == TokenKind.Slash;
        if (joined || (Kind == TokenKind.Number && KindAt(1) == TokenKind.Slash && KindAt(2) == TokenKind.Number))
        {
            at += joined ? 1 : 0;
            return Decimal() is { } over && Over(over) is { } part ? first + part : null;
        }

        return first;
    }

    private decimal Vulgar()
    {
        var (over, under) = VulgarFractions.Value(Current[0])!.Value;
        at++;
        return (decimal)over / under;
    }

    private decimal? Over(decimal over)
    {
        at++;
        var span = Here;
        if (Decimal() is not { } under)
        {
            return null;
        }

        if (under == 0)
        {
            Error("divided-by-zero", "a fraction has a bottom number above 0", span);
            return null;
        }

        return over / under;
    }

    private decimal? Decimal()
    {
        string text = Current;
        if (text.Length > Bounds.MostDigits || !decimal.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out decimal value))
        {
            Error("number-too-large", $"a number has at most {Bounds.MostDigits} digits", Here);
            return null;
        }

        bool thousands = KindAt(1) == TokenKind.Comma && KindAt(2) == TokenKind.Number && TextAt(2).Length == 3
            && tokens[at].End == tokens[at + 1].Start && tokens[at + 1].End == tokens[at + 2].Start;
        if (thousands)
        {
            Error("comma-in-number", $"a number has no comma inside: `{text},{TextAt(2)}`", Here.To(SpanOf(tokens[at + 2])), $"write `{text}{TextAt(2)}`");
            at += 3;
            return null;
        }

        at++;
        return value;
    }

    private bool IsAny(params ReadOnlySpan<string> words)
    {
        foreach (string word in words)
        {
            if (IsWord(word))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Words that may follow a length and are no unit.</summary>
    private static bool IsJoiningWord(string word) => word.ToLowerInvariant() is "x" or "×" or "from" or "to" or "wide" or "apart" or "below" or "above" or "high" or "deep" or "gap" or "at" or "by" or "in" or "and" or "long" or "on";

    private static QuantityKind? OtherKind(string word) => (UnitTable.Find(word) ?? UnitTable.Rate(word))?.Kind;
}
