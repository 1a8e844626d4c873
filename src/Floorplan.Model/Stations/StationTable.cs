using Floorplan.Language.Details;
using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax.Statements;
using Floorplan.Language.Syntax.Values;
using Floorplan.Model.Details;
using Floorplan.Model.Shapes;

namespace Floorplan.Model.Stations;

/// <summary>All that a station, store, bin or sink may say: one row a detail, or a part of one that a kind may give alone.</summary>
public static class StationTable
{
    public static SaidRow<StationStatement, SaidSize> Size { get; } =
        Row("size", StationDetails.Size, SizeOf, (SaidSize size, UnitSystem units) => size.Print(units));

    /// <summary>Quarter turns clockwise. Those of another angle are told when the plan is put together.</summary>
    public static SaidRow<StationStatement, decimal> Turned { get; } = Row(
        "turned", StationDetails.Turned, t => (object)t.Value, (decimal degrees, UnitSystem _) => FormattableString.Invariant($"{degrees:0.##} degrees"));

    public static SaidRow<StationStatement, IReadOnlyList<SaidWorkers>> Workers { get; } = new(
        "workers",
        StationDetails.Workers,
        (s, turns) => List(s.Values(StationDetails.Workers), w => new SaidWorkers(w.Side.Side.Turned(turns), w.Count, w.Apart?.Value)),
        (rows, units) => string.Join(", ", rows.Select(r => r.Print(units))));

    public static SaidRow<StationStatement, Quantity> WorkEach { get; } = new(
        "work each", StationDetails.Work, (s, _) => s.Values(StationDetails.Work).Select(w => w.Each).FirstOrDefault(e => e is not null)?.Value, Text);

    public static SaidRow<StationStatement, WorkKind> WorkKind { get; } = new(
        "work", StationDetails.Work, (s, _) => KindOf(s.Values(StationDetails.Work).Select(w => w.Kind).FirstOrDefault(k => k is not null)?.Text), (kind, _) => kind.ToString().ToLowerInvariant());

    public static SaidRow<StationStatement, Length> WorkHeight { get; } = OfLength(StationDetails.WorkHeight);

    public static SaidRow<StationStatement, Quantity> Batch { get; } = OfQuantity(StationDetails.Batch);

    public static SaidRow<StationStatement, Quantity> Cycle { get; } = OfQuantity(StationDetails.Cycle);

    public static SaidRow<StationStatement, Quantity> Stays { get; } = OfQuantity(StationDetails.Stays);

    public static SaidRow<StationStatement, Quantity> Holds { get; } = OfQuantity(StationDetails.Holds);

    public static SaidRow<StationStatement, IReadOnlyList<Need>> Needs { get; } = new(
        "needs",
        StationDetails.Needs,
        (s, _) => List(s.Values(StationDetails.Needs).SelectMany(n => n), NeedReading.Of),
        (needs, _) => string.Join(", ", needs.Select(n => n.Text)));

    public static SaidRow<StationStatement, IReadOnlyList<SaidClear>> Clears { get; } = new(
        "clear",
        StationDetails.Clear,
        (s, turns) => List(s.Values(StationDetails.Clear), c => new SaidClear(c.Side.Side.Turned(turns), c.Depth.Value, c.Purpose?.Text ?? "", c.Span)),
        (clears, units) => string.Join(", ", clears.Select(c => c.Print(units))));

    public static SaidRow<StationStatement, IReadOnlyList<Waste>> Wastes { get; } = new(
        "waste",
        StationDetails.Waste,
        (s, _) => List(s.Values(StationDetails.Waste), w => new Waste(w.Amount?.Value, w.To?.Text, w.Span)),
        (wastes, _) => string.Join(", ", wastes.Select(w => w.Text)));

    public static SaidRow<StationStatement, Quantity> WeightEmpty { get; } = Row<WeightSyntax, Quantity>("weight empty", StationDetails.Weight, w => w.Empty?.Value, Text);

    public static SaidRow<StationStatement, Quantity> WeightFull { get; } = Row<WeightSyntax, Quantity>("weight full", StationDetails.Weight, w => w.Full?.Value, Text);

    public static SaidRow<StationStatement, string> Cost { get; } = OfText(StationDetails.Cost);

    public static SaidRow<StationStatement, bool> Hung { get; } = Row("hung", StationDetails.Hung, (WordSyntax _) => (object)true, (bool _, UnitSystem _) => Yes);

    public static SaidRow<StationStatement, Length> Underside { get; } = OfLength(StationDetails.Underside);

    public static SaidRow<StationStatement, bool> OnWheels { get; } = Row("on wheels", StationDetails.OnWheels, (WordSyntax _) => (object)true, (bool _, UnitSystem _) => Yes);

    public static SaidRow<StationStatement, Length> AirGap { get; } = OfLength(StationDetails.AirGap);

    public static SaidRow<StationStatement, Length> Inlet { get; } = OfLength(StationDetails.Inlet);

    public static SaidRow<StationStatement, string> Circuit { get; } = OfText(StationDetails.Circuit);

    public static SaidRow<StationStatement, Quantity> Volume { get; } = OfQuantity(StationDetails.Volume);

    /// <summary>How a detail is printed that is said by its words alone.</summary>
    internal const string Yes = "yes";

    /// <summary>In the order that they are told.</summary>
    public static IReadOnlyList<SaidRow<StationStatement>> All { get; } =
    [
        Size, Turned, Workers, WorkEach, WorkKind, WorkHeight, Batch, Cycle, Stays, Holds, Needs, Clears, Wastes, WeightEmpty, WeightFull, Cost, Hung, Underside, OnWheels,
        AirGap, Inlet, Circuit, Volume,
    ];

    private static SaidRow<StationStatement, TValue> Row<TSyntax, TValue>(
        string word, Detail<TSyntax> detail, Func<TSyntax, object?> read, Func<TValue, UnitSystem, string> print)
        where TSyntax : class => new(word, detail, (s, _) => s.Value(detail) is { } said ? read(said) : null, print);

    private static SaidRow<StationStatement, Length> OfLength(Detail<LengthSyntax> detail) =>
        Row<LengthSyntax, Length>(detail.Word, detail, l => l.Value, LengthText.Sentence);

    private static SaidRow<StationStatement, Quantity> OfQuantity(Detail<QuantitySyntax> detail) =>
        Row<QuantitySyntax, Quantity>(detail.Word, detail, q => q.Value, Text);

    private static SaidRow<StationStatement, string> OfText(Detail<TextSyntax> detail) =>
        Row<TextSyntax, string>(detail.Word, detail, t => t.Text, (text, _) => text);

    private static string Text(Quantity quantity, UnitSystem units) => quantity.ToString();

    private static IReadOnlyList<TValue>? List<TSyntax, TValue>(IEnumerable<TSyntax> said, Func<TSyntax, TValue> read)
    {
        List<TValue> values = [.. said.Select(read)];
        return values.Count == 0 ? null : values;
    }

    private static object? SizeOf(SizeSyntax size) => new SaidSize(
        size.Width.Value, size.Round ? size.Width.Value : size.Depth?.Value ?? Length.Zero, size.Height?.Value, size.Round);

    private static object? KindOf(string? word) => word switch
    {
        "precise" => Stations.WorkKind.Precise,
        "light" => Stations.WorkKind.Light,
        "heavy" => Stations.WorkKind.Heavy,
        "cutting" => Stations.WorkKind.Cutting,
        _ => null,
    };
}
