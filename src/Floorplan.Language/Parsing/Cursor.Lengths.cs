using System.Globalization;
using Floorplan.Language.Diagnostics;
using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax.Values;
using Floorplan.Language.Text;
using Floorplan.Language.Tokens;

namespace Floorplan.Language.Parsing;

/// <content>Lengths, exact to the nanometre.</content>
internal sealed partial class Cursor
{
    private const decimal NmPerMillimetre = Quantities.Length.NanometresPerMillimetre;
    private const decimal NmPerInch = Quantities.Length.NanometresPerInch;

    public bool AtNumber
        => Kind is TokenKind.Number or TokenKind.Fraction
            || (Kind is TokenKind.Dash && KindAt(1) is TokenKind.Number or TokenKind.Fraction);

    public LengthSyntax? Length(string what, bool mayBeNegative = false)
    {
        if (!AtNumber)
        {
            Wrong(
                what,
                "write a length such as "
                + (bareUnits == UnitSystem.Metric ? "`600`, `60 cm`, `2'-6\"` or `9 in`" : "`2'-6\"`, `30 in`, `30` (inches) or `760 mm`"));
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
        if (IsWrongUnit(start))
        {
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

        decimal? metric = Current.ToLowerInvariant() switch
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

    /// <summary>A bare number is in the plan's units: millimetres, or inches in a feet plan, where whole feet carry their mark.</summary>
    private decimal Bare(decimal number) => number * (bareUnits == UnitSystem.Metric ? NmPerMillimetre : NmPerInch);

    /// <summary>A word right after a length that is another kind's unit, or a slip of a length's unit.</summary>
    private bool IsWrongUnit(SourceSpan start)
    {
        // In `28 on x 36` the word before the `x` can only be meant as a unit.
        bool unitIsMeant = IsWord("x", 1) && !IsWord("x");
        if (Kind is not TokenKind.Word || (IsJoiningWord(Current) && !unitIsMeant))
        {
            return false;
        }

        if (OtherKind(Current) is { } kind)
        {
            Error(
                "wrong-unit", $"expected a length, found {KindNames.Of(kind)} (`{Shown(start.To(Here).Value)}`)", start.To(Here),
                "lengths are written in mm, cm, m, in or ft");
            return true;
        }

        if ((LetterForDigit() ?? NearNames.Hint(Current, LengthUnits)) is { } hint)
        {
            Error("unknown-unit", $"`{Shown(Current)}` is not a unit of length", Here, hint);
            return true;
        }

        return false;
    }

    private decimal? AddInches(decimal feet)
    {
        int back = at;
        bool touching = !AtEnd && tokens[at - 1].End == tokens[at].Start;
        bool joined = touching && (Kind is TokenKind.Number
            ? tokens[at - 1].Kind == TokenKind.FootMark
            : Kind == TokenKind.Dash && KindAt(1) == TokenKind.Number && tokens[at].End == tokens[at + 1].Start);
        if (Kind == TokenKind.Dash)
        {
            at++;
        }

        if (Kind is not (TokenKind.Number or TokenKind.Fraction))
        {
            at = back;
            return feet;
        }

        var span = Here;
        if (MixedNumber() is not { } inches)
        {
            return null;
        }

        span = span.To(Before);
        bool wordIn = IsAny("in", "inch", "inches") && !(KindAt(1) == TokenKind.Word && !IsJoiningWord(TextAt(1)));
        if (Kind == TokenKind.InchMark || wordIn)
        {
            at++;
            return Sum(feet, inches, span);
        }

        // `8'-6` and `8'6` without a mark can only be inches; `8' 6` may be two lengths, such as a corner's.
        if (joined)
        {
            return Sum(feet, inches, span);
        }

        at = back;
        return feet;
    }

    /// <summary>No tape reads 5'14", so one of the two figures is a slip.</summary>
    private decimal? Sum(decimal feet, decimal inches, SourceSpan span)
    {
        if (inches < 12)
        {
            return feet + (inches * NmPerInch);
        }

        string meant =
            QuantityText.Bare(new Length((long)Math.Min(feet + (inches * NmPerInch), Bounds.LongestLength)), UnitSystem.Feet);
        Error(
            "inches-over-foot", $"after feet there are fewer than 12 inches, and here are {Shown(span.Value)}", span,
            $"if that is what you measured write `{meant}`; otherwise mend one of the two figures");
        return null;
    }

    /// <summary><c>6</c>, <c>6.5</c>, <c>1/2</c>, <c>6 1/2</c>, <c>6½</c>, <c>6 ½</c>.</summary>
    private decimal? MixedNumber()
    {
        var span = Here;
        if (Parts() is not { } value)
        {
            return null;
        }

        // A tiny bottom number makes a huge fraction, which would not fit the arithmetic that follows.
        if (value > Bounds.LargestNumber)
        {
            Error("number-too-large", $"a number has at most {Bounds.MostDigits} digits", span.To(Before));
            return null;
        }

        return value;
    }

    private decimal? Parts()
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
        if (text.Length > Bounds.MostDigits
            || !decimal.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out decimal value))
        {
            Error("number-too-large", $"a number has at most {Bounds.MostDigits} digits", Here);
            return null;
        }

        bool thousands = KindAt(1) == TokenKind.Comma && KindAt(2) == TokenKind.Number && TextAt(2).Length == 3
            && tokens[at].End == tokens[at + 1].Start && tokens[at + 1].End == tokens[at + 2].Start;
        if (thousands)
        {
            Error(
                "comma-in-number", $"a number has no comma inside: `{text},{TextAt(2)}`", Here.To(SpanOf(tokens[at + 2])),
                $"write `{text}{TextAt(2)}`");
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
    private static bool IsJoiningWord(string word)
        => word.ToLowerInvariant() is "x" or "×" or "from" or "to" or "wide" or "ahead" or "apart" or "below" or "above" or "high" or "deep"
            or "gap" or "at" or "by" or "in" or "and" or "long" or "on" or "each" or "per" or "for";

    /// <summary><c>95O</c> for 950.</summary>
    private string? LetterForDigit() => Current is "O" or "o" or "l" or "I" && at > 0 && tokens[at - 1].End == tokens[at].Start
        ? $"the letter `{Current}` stands where a digit is meant: write "
            + $"`{source.Content.Substring(tokens[at - 1].Start, tokens[at - 1].Length)}{(Current is "O" or "o" ? "0" : "1")}`"
        : null;

    private static readonly string[] LengthUnits = ["mm", "cm", "m", "in", "ft", "inch", "inches", "feet", "foot", "metre", "metres"];

    private static QuantityKind? OtherKind(string word) => (UnitTable.Find(word) ?? UnitTable.Rate(word))?.Kind;
}
