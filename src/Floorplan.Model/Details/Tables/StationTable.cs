using Floorplan.Language.Details;
using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax.Statements;
using Floorplan.Language.Syntax.Values;
using Floorplan.Model.Shapes;
using Floorplan.Model.Stations;
using Rows = Floorplan.Model.Details.SaidRows<Floorplan.Language.Syntax.Statements.StationStatement>;

namespace Floorplan.Model.Details.Tables;

/// <summary>All that a station, store, bin or sink may say: one row a detail, or a part of one that a kind may give alone.</summary>
public static class StationTable
{
    public static SaidRow<StationStatement, SaidSize> Size { get; } =
        Rows.Part<SizeSyntax, SaidSize>("size", StationDetails.Size, SizeOf, (size, units) => size.Print(units));

    /// <summary>As written: the box of the station says where it came to stand.</summary>
    public static SaidRow<StationStatement, string> Place { get; } = Rows.Place(StationDetails.Place);

    /// <summary>Quarter turns clockwise. Those of another angle are told when the plan is put together.</summary>
    public static SaidRow<StationStatement, decimal> Turned { get; } = Rows.Of(StationDetails.Turned, "degrees");

    public static SaidRow<StationStatement, IReadOnlyList<SaidWorkers>> Workers { get; } = new(
        "workers",
        StationDetails.Workers,
        (s, turns) => List(s.Values(StationDetails.Workers), w => new SaidWorkers(w.Side.Side.Turned(turns), w.Count, w.Apart?.Value)),
        (rows, units) => string.Join(", ", rows.Select(r => r.Print(units))));

    public static SaidRow<StationStatement, Quantity> WorkEach { get; } = new(
        "work each",
        StationDetails.Work,
        (s, _) => s.Values(StationDetails.Work).Select(w => w.Each).FirstOrDefault(e => e is not null)?.Value,
        (each, units) => QuantityText.Of(each, units));

    public static SaidRow<StationStatement, Quantity> WorkSpread { get; } = new(
        "work spread",
        StationDetails.Work,
        (s, _) => s.Values(StationDetails.Work).Select(w => w.Spread).FirstOrDefault(e => e is not null)?.Value,
        (spread, units) => QuantityText.Of(spread, units));

    public static SaidRow<StationStatement, Quantity> Pause { get; } = Rows.Part("pause", StationDetails.Pause, p => p.Time);

    public static SaidRow<StationStatement, Quantity> PauseEvery { get; } = Rows.Part("pause every", StationDetails.Pause, p => p.Every);

    public static SaidRow<StationStatement, Quantity> Rework { get; } = Rows.Part("rework", StationDetails.Rework, r => r.Share);

    public static SaidRow<StationStatement, SaidStation> ReworkAt { get; } = Rows.Part<ReworkSyntax, SaidStation>(
        "rework at", StationDetails.Rework, r => r.At is { } at ? new SaidStation(at.Text, at.Span) : null, (at, _) => at.Id);

    public static SaidRow<StationStatement, WorkKind> WorkKind { get; } = new(
        "work",
        StationDetails.Work,
        (s, _) => KindOf(s.Values(StationDetails.Work).Select(w => w.Kind).FirstOrDefault(k => k is not null)?.Text),
        (kind, _) => kind.ToString().ToLowerInvariant());

    public static SaidRow<StationStatement, Length> WorkHeight { get; } = Rows.Of(StationDetails.WorkHeight);

    public static SaidRow<StationStatement, Quantity> Batch { get; } = Rows.Of(StationDetails.Batch);

    public static SaidRow<StationStatement, Quantity> Cycle { get; } = Rows.Of(StationDetails.Cycle);

    public static SaidRow<StationStatement, Quantity> Stays { get; } = Rows.Of(StationDetails.Stays);

    public static SaidRow<StationStatement, Quantity> Holds { get; } = Rows.Of(StationDetails.Holds);

    public static SaidRow<StationStatement, Quantity> Waits { get; } = Rows.Of(StationDetails.Waits);

    public static SaidRow<StationStatement, IReadOnlyList<SaidForProduct>> ForProducts { get; } = Rows.All(
        StationDetails.ForProduct,
        f => new SaidForProduct(
            f.Product.Text, f.Work?.Value, (int?)f.Batch?.Value, f.Cycle?.Value, f.Stays?.Value, (int?)f.Holds?.Value,
            (int?)f.Waits?.Value),
        (f, units) => f.Print(units),
        "for products");

    public static SaidRow<StationStatement, IReadOnlyList<Need>> Needs { get; } = new(
        "needs",
        StationDetails.Needs,
        (s, _) => List(s.Values(StationDetails.Needs).SelectMany(n => n), NeedReading.Of),
        (needs, units) => string.Join(", ", needs.Select(n => n.Print(units))));

    public static SaidRow<StationStatement, IReadOnlyList<SaidClear>> Clears { get; } = new(
        "clear",
        StationDetails.Clear,
        (s, turns) => List(
            s.Values(StationDetails.Clear),
            c => new SaidClear(c.Side.Side.Turned(turns), c.Depth.Value, c.Purpose?.Text ?? "", c.Span)),
        (clears, units) => string.Join(", ", clears.Select(c => c.Print(units))));

    public static SaidRow<StationStatement, IReadOnlyList<Waste>> Wastes { get; } = new(
        "waste",
        StationDetails.Waste,
        (s, _) => List(s.Values(StationDetails.Waste), w => new Waste(w.Amount?.Value, w.To?.Text, w.Span)),
        (wastes, units) => string.Join(", ", wastes.Select(w => w.Print(units))));

    public static SaidRow<StationStatement, Quantity> WeightEmpty { get; } = Rows.Part("weight empty", StationDetails.Weight, w => w.Empty);

    public static SaidRow<StationStatement, Quantity> WeightFull { get; } = Rows.Part("weight full", StationDetails.Weight, w => w.Full);

    public static SaidRow<StationStatement, string> Cost { get; } = Rows.Of(StationDetails.Cost);

    public static SaidRow<StationStatement, bool> Hung { get; } = Rows.Mark(StationDetails.Hung);

    public static SaidRow<StationStatement, Length> Underside { get; } = Rows.Of(StationDetails.Underside);

    public static SaidRow<StationStatement, bool> OnWheels { get; } = Rows.Mark(StationDetails.OnWheels);

    public static SaidRow<StationStatement, Length> AirGap { get; } = Rows.Of(StationDetails.AirGap);

    public static SaidRow<StationStatement, Length> Inlet { get; } = Rows.Of(StationDetails.Inlet);

    public static SaidRow<StationStatement, string> Circuit { get; } = Rows.Of(StationDetails.Circuit);

    public static SaidRow<StationStatement, Quantity> Volume { get; } = Rows.Of(StationDetails.Volume);

    /// <summary>In the order that they are told.</summary>
    public static IReadOnlyList<SaidRow<StationStatement>> All { get; } =
    [
        Size, Place, Turned, Workers, WorkEach, WorkSpread, WorkKind, Pause, PauseEvery, Rework, ReworkAt, WorkHeight, Batch, Cycle, Stays,
        Holds, Waits, ForProducts, Needs, Clears, Wastes, WeightEmpty, WeightFull, Cost, Hung, Underside, OnWheels,
        AirGap, Inlet, Circuit, Volume,
    ];

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
