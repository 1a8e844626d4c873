using Floorplan.Language.Details;
using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax.Statements;
using Floorplan.Language.Syntax.Values;
using Floorplan.Model.Shapes;

namespace Floorplan.Model.Details;

/// <summary>Rows of the usual forms.</summary>
internal static class SaidRows<TStatement>
    where TStatement : Statement
{
    /// <summary>How a detail is printed that is said by its words alone.</summary>
    private const string Yes = SaidThings.Yes;

    public static SaidRow<TStatement, Length> Of(Detail<LengthSyntax> detail) =>
        Part<LengthSyntax, Length>(detail.Word, detail, l => l.Value, QuantityText.Length);

    public static SaidRow<TStatement, Quantity> Of(Detail<QuantitySyntax> detail) =>
        Part<QuantitySyntax, Quantity>(detail.Word, detail, q => q.Value, (q, units) => QuantityText.Of(q, units));

    public static SaidRow<TStatement, string> Of(Detail<TextSyntax> detail) =>
        Part<TextSyntax, string>(detail.Word, detail, t => t.Text, (text, _) => text);

    public static SaidRow<TStatement, string> Of(Detail<NameSyntax> detail) =>
        Part<NameSyntax, string>(detail.Word, detail, n => n.Text, (name, _) => name);

    /// <param name="unit">Printed after the number.</param>
    public static SaidRow<TStatement, decimal> Of(Detail<NumberSyntax> detail, string unit = "") =>
        Part<NumberSyntax, decimal>(
            detail.Word,
            detail,
            n => n.Value,
            (n, _) => FormattableString.Invariant($"{n:0.######} {unit}").TrimEnd());

    public static SaidRow<TStatement, string> Of(Detail<SideSyntax> detail) =>
        Part<SideSyntax, string>(detail.Word, detail, s => s.Side.Word(), (side, _) => side);

    /// <summary>One of several words.</summary>
    public static SaidRow<TStatement, string> Of(Detail<WordSyntax> detail, string? called = null) =>
        Part<WordSyntax, string>(called ?? detail.Word, detail, w => w.Text, (word, _) => word);

    public static SaidRow<TStatement, bool> Mark(Detail<WordSyntax> detail) =>
        Part<WordSyntax, bool>(detail.Word, detail, _ => true, (_, _) => Yes);

    public static SaidRow<TStatement, string> Names(Detail<IReadOnlyList<NameSyntax>> detail) =>
        Part<IReadOnlyList<NameSyntax>, string>(detail.Word, detail, n => string.Join(", ", n.Select(w => w.Text)), (names, _) => names);

    /// <summary>A place as written. Where the thing stands is told by its box, so that it is compared by that.</summary>
    public static SaidRow<TStatement, string> Place(Detail<PlaceTerm> detail) => new(
        detail.Word,
        detail,
        (s, _) => s.Values(detail) is { Count: > 0 } terms ? string.Join(", ", terms.Select(t => t.Span.Value)) : null,
        (place, _) => place)
    {
        ToldByBox = true,
    };

    /// <param name="toldByBox">The box of the thing tells of it too.</param>
    public static SaidRow<TStatement, SizeSyntax> Size(Detail<SizeSyntax> detail, bool toldByBox = false) =>
        new(detail.Word, detail, (s, _) => s.Value(detail), Text) { ToldByBox = toldByBox };

    /// <summary>A part of a detail that is said once.</summary>
    /// <param name="read">A <typeparamref name="TValue"/>, or null when that part is not said.</param>
    public static SaidRow<TStatement, TValue> Part<TSyntax, TValue>(
        string word, Detail<TSyntax> detail, Func<TSyntax, object?> read, Func<TValue, UnitSystem, string> print)
        where TSyntax : class => new(word, detail, (s, _) => s.Value(detail) is { } said ? read(said) : null, print);

    /// <summary>A length that is part of a detail.</summary>
    public static SaidRow<TStatement, Length> Part<TSyntax>(string word, Detail<TSyntax> detail, Func<TSyntax, LengthSyntax?> read)
        where TSyntax : class => Part<TSyntax, Length>(word, detail, s => read(s)?.Value, QuantityText.Length);

    /// <summary>A quantity that is part of a detail.</summary>
    public static SaidRow<TStatement, Quantity> Part<TSyntax>(string word, Detail<TSyntax> detail, Func<TSyntax, QuantitySyntax?> read)
        where TSyntax : class => Part<TSyntax, Quantity>(word, detail, s => read(s)?.Value, (q, units) => QuantityText.Of(q, units));

    /// <summary>A detail that may be said several times, one after the other.</summary>
    public static SaidRow<TStatement, IReadOnlyList<TValue>> All<TSyntax, TValue>(
        Detail<TSyntax> detail, Func<TSyntax, TValue> read, Func<TValue, UnitSystem, string> print, string? called = null)
        where TSyntax : class => new(
            called ?? detail.Word,
            detail,
            (s, _) => s.Values(detail) is { Count: > 0 } said ? (IReadOnlyList<TValue>)[.. said.Select(read)] : null,
            (values, units) => string.Join(", ", values.Select(v => print(v, units))));

    public static string Text(SizeSyntax size, UnitSystem units) => (size.Round ? "round " : "")
        + string.Join(
            " x ",
            new[] { size.Width, size.Depth, size.Height }.OfType<LengthSyntax>().Select(l => QuantityText.Length(l.Value, units)));
}
