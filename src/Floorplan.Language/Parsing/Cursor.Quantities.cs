using System.Globalization;
using Floorplan.Language.Diagnostics;
using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax;
using Floorplan.Language.Syntax.Values;
using Floorplan.Language.Tokens;

namespace Floorplan.Language.Parsing;

/// <content>Numbers, quantities, sides and sizes.</content>
internal sealed partial class Cursor
{
    public NumberSyntax? Number(string what)
    {
        if (Kind != TokenKind.Number)
        {
            Wrong(what);
            return null;
        }

        var span = Here;
        return Decimal() is { } value ? new NumberSyntax(value, span) : null;
    }

    /// <summary>A whole number of things, from <paramref name="least"/> to <paramref name="most"/>.</summary>
    /// <param name="what">For the sentence: <c>how many people</c>.</param>
    public NumberSyntax? Whole(string what, int least, int most)
    {
        if (Number(what) is not { } number)
        {
            return null;
        }

        if (number.Value < least || number.Value > most || number.Value != decimal.Truncate(number.Value))
        {
            Error(
                "count-out-of-range",
                string.Create(CultureInfo.InvariantCulture, $"{what} is a whole number from {least} to {most}"),
                number.Span,
                "check the figure");
            return null;
        }

        return number;
    }

    /// <summary>A length up to a bound.</summary>
    /// <param name="subject">For the sentence: <c>a waste pipe</c>.</param>
    public LengthSyntax? LengthUpTo(string what, string subject, Quantities.Length most)
    {
        if (LengthAboveZero(what, subject) is not { } length)
        {
            return null;
        }

        if (length.Value > most)
        {
            Error(
                "out-of-range", $"{subject} is at most {QuantityText.Length(most, bareUnits)}", length.Span,
                "check the figure and its unit");
            return null;
        }

        return length;
    }

    /// <summary>
    /// A number with a unit of one of these kinds. With <see cref="QuantityKind.Count"/> any word may be what is counted.
    /// </summary>
    public QuantitySyntax? Quantity(string what, params IReadOnlyList<QuantityKind> kinds)
    {
        string example = string.Join("; ", kinds.Select(UnitTable.Examples));
        if (!AtNumber)
        {
            Wrong(what, $"write a number and a unit: {example}");
            return null;
        }

        var start = Here;
        bool negative = Kind == TokenKind.Dash;
        at += negative ? 1 : 0;
        if (MixedNumber() is not { } value)
        {
            return null;
        }

        value = negative ? -value : value;
        if (TakeUnit(kinds) is not { } unit)
        {
            if (Kind == TokenKind.Word && !IsJoiningWord(Current))
            {
                Error(
                    "unknown-unit",
                    $"`{Shown(Current)}` is not a unit of {string.Join(" or ", kinds.Select(k => KindNames.Of(k).Split(' ', 2)[1]))}", Here,
                    LetterForDigit() ?? NearNames.Hint(Current, kinds.SelectMany(UnitTable.SymbolsOf)) ?? $"units that fit: {example}");
                return null;
            }

            Error(
                "missing-unit", $"{what} needs a unit after `{source.Content[start.Start..Before.End]}`", start.To(Before),
                $"units that fit: {example}");
            return null;
        }

        var span = start.To(Before);
        if (!kinds.Contains(unit.Kind))
        {
            Error(
                "wrong-unit",
                $"expected {string.Join(" or ", kinds.Select(KindNames.Of))}, found {KindNames.Of(unit.Kind)} (`{Shown(span.Value)}`)",
                span, $"units that fit: {example}");
            return null;
        }

        if (negative && unit.Kind != QuantityKind.Temperature)
        {
            Error("negative-quantity", $"{what} cannot be negative", span);
            return null;
        }

        var quantity = new Quantity(value, unit);
        if (QuantityBounds.Broken(quantity) is { } bound)
        {
            Error(
                "out-of-range",
                $"`{Shown(span.Value)}` is {(quantity.Base < bound.Base ? "less" : "more")} than any small unit has: "
                    + $"{(quantity.Base < bound.Base ? "at least" : "at most")} {QuantityText.Of(bound, bareUnits)}",
                span,
                "check the figure and its unit");
            return null;
        }

        return new QuantitySyntax(quantity, span);
    }

    public SideSyntax? Side(string what)
    {
        var span = Here;
        if (TrySide() is { } side)
        {
            return new SideSyntax(side, span);
        }

        Wrong($"{what}: north, south, east or west", Kind == TokenKind.Word
            ? NearNames.Hint(Current, ["north", "south", "east", "west"])
            : null);
        return null;
    }

    public bool AtSide(int ahead = 0) => SideOf(ahead) is not null;

    /// <summary><c>1200 x 600 x 900</c>, at most <paramref name="most"/> lengths and at least <paramref name="least"/>.</summary>
    public SizeSyntax? Size(string what, int least, int most)
    {
        var start = Here;
        var lengths = new List<LengthSyntax>();
        do
        {
            if (LengthAboveZero(lengths.Count == 0 ? what : "a length after `x`", "a size") is not { } length)
            {
                return null;
            }

            lengths.Add(length);
        }
        while (lengths.Count < most && TryCross());

        if (lengths.Count < least)
        {
            Wrong($"`x` and {(least - lengths.Count == 1 ? "one more length" : "more lengths")}", SizeHelp(most));
            return null;
        }

        if (lengths.Count < most && AtNumber && !PlaceFollows())
        {
            Wrong("`x` between two lengths", SizeHelp(most));
        }
        else if (lengths.Count == most && most > 1 && IsWord("x"))
        {
            Error("left-over", $"a size has at most {(most == 2 ? "two" : "three")} lengths, found another `x`", Here, SizeHelp(most));
        }

        return new SizeSyntax(lengths[0], lengths.ElementAtOrDefault(1), lengths.ElementAtOrDefault(2), false, start.To(Before));
    }

    /// <summary>A length of something that is there, so that it is not 0.</summary>
    /// <param name="subject">For the sentence: <c>a size</c>.</param>
    public LengthSyntax? LengthAboveZero(string what, string subject)
    {
        if (Length(what) is not { } length)
        {
            return null;
        }

        if (length.Value == Quantities.Length.Zero)
        {
            Error("size-too-small", $"{subject} is more than 0", length.Span);
            return null;
        }

        return length;
    }

    private string SizeHelp(int most) => (most, bareUnits) switch
    {
        (2, UnitSystem.Metric) => "write both, such as `900 x 2050`",
        (2, _) => "write both, such as `36 x 80`, in inches",
        (_, UnitSystem.Metric) => "write along, across and height, such as `1200 x 600 x 900`",
        _ => "write along, across and height, such as `48 x 24 x 36`, in inches",
    };

    /// <summary>A comma was left out before a place such as <c>300 from west</c>.</summary>
    private bool PlaceFollows()
    {
        int ahead = 0;
        while (KindAt(ahead) is { } kind && kind != TokenKind.Comma && !IsWord("from", ahead))
        {
            ahead++;
        }

        return IsWord("from", ahead);
    }

    /// <summary>Behind <c>round</c>: diameter and height.</summary>
    public SizeSyntax? RoundSize()
    {
        var start = Before;
        if (Size("a diameter", 1, 2) is not { } size)
        {
            return null;
        }

        return new SizeSyntax(size.Width, null, size.Depth, true, start.To(Before));
    }

    private bool TryCross()
    {
        if (IsWord("x") || (Kind == TokenKind.Word && Current == "×") || IsWord("by") && KindAt(1) == TokenKind.Number)
        {
            at++;
            return true;
        }

        return false;
    }

    private Side? TrySide()
    {
        var side = SideOf(0);
        at += side is null ? 0 : 1;
        return side;
    }

    private Side? SideOf(int ahead) =>
        IsWord("north", ahead) ? Syntax.Side.North
        : IsWord("south", ahead) ? Syntax.Side.South
        : IsWord("east", ahead) ? Syntax.Side.East
        : IsWord("west", ahead) ? Syntax.Side.West
        : null;

    private Unit? TakeUnit(IReadOnlyList<QuantityKind> kinds)
    {
        if (Kind == TokenKind.Percent)
        {
            at++;
            return UnitTable.Find("%");
        }

        if (Kind == TokenKind.Word && Current is "per" or "each" or "for" or "to" or "at" or "in" or "x")
        {
            return kinds.Contains(QuantityKind.Count) ? UnitTable.Count("") : null;
        }

        if (kinds.Contains(QuantityKind.Temperature))
        {
            // `60 °C` and `60 degrees C` are read as `60 C`.
            at += Current is "°" or "degrees" && KindAt(1) == TokenKind.Word ? 1 : 0;
        }

        if (Kind == TokenKind.Word)
        {
            string word = Current;
            if (kinds.Contains(QuantityKind.Rate)
                && IsWord("per", 1)
                && KindAt(2) == TokenKind.Word
                && UnitTable.Rate(word + "/" + TextAt(2)) is { } rate)
            {
                at += 3;
                return rate;
            }

            var known = UnitTable.Find(word) ?? UnitTable.Rate(word)
                ?? (LengthUnit(word) ? new Unit(word, QuantityKind.Length, x => x) : null);
            if (known is not null || kinds.Contains(QuantityKind.Count))
            {
                at++;
                return known ?? UnitTable.Count(word);
            }

            return null;
        }

        return kinds.Contains(QuantityKind.Count) ? UnitTable.Count("") : null;
    }

    private static bool LengthUnit(string word) => word is "mm" or "cm" or "m" or "in" or "ft";
}
