using Floorplan.Language.Diagnostics;
using Floorplan.Language.Syntax.Statements;
using Floorplan.Language.Syntax.Values;
using Floorplan.Model.Shapes;
using Floorplan.Model.Stations;

namespace Floorplan.Model.Binding.Reading;

/// <summary>
/// The kinds of a plan and of the files that it uses. A station takes every detail of its kind that it does not give
/// itself; a kind may take from another kind in the same way.
/// </summary>
internal sealed class KindTable(Reports reports)
{
    /// <summary>Kinds of kinds of kinds: more than this is a slip; own bound.</summary>
    private const int LongestChain = 8;

    /// <summary>More workers on one side than any bench has; a bound against nonsense input.</summary>
    private const int MostWorkers = 50;

    private readonly Dictionary<string, StationStatement> kinds = new(StringComparer.Ordinal);

    public void Add(StationStatement kind)
    {
        if (kind.Name is not { } name)
        {
            return;
        }

        if (!kinds.TryAdd(name.Text, kind))
        {
            reports.Error(
                "name-taken",
                $"the kind `{name.Text}` is described twice",
                name.Span,
                "give one of them another name",
                new RelatedSpan(kinds[name.Text].HeadSpan, "first described here"));
        }
    }

    /// <summary>The statement and the kinds that it takes from, nearest first.</summary>
    public IReadOnlyList<StationStatement> ChainOf(StationStatement statement)
    {
        var chain = new List<StationStatement> { statement };
        while (chain[^1].Kind is { } wanted)
        {
            if (!kinds.TryGetValue(wanted.Text, out var kind))
            {
                reports.Error(
                    "unknown-kind",
                    $"there is no kind called `{wanted.Text}`",
                    wanted.Span,
                    reports.Near(wanted.Text, kinds.Keys) ?? "describe it with `kind`, or add `kinds from` and the file or the shelf that has it");
                break;
            }

            if (chain.Contains(kind))
            {
                reports.Error("kind-circle", $"the kind `{wanted.Text}` takes its details from itself", wanted.Span, "let one of the kinds stand alone");
                break;
            }

            if (chain.Count > LongestChain)
            {
                reports.Error("kind-too-deep", $"more than {LongestChain} kinds take their details from one another here", wanted.Span, "take from an earlier kind");
                break;
            }

            chain.Add(kind);
        }

        return chain;
    }

    /// <summary>Each detail from the nearest statement that gives it. Sides of a kind turn with the station; a station's own are plan sides.</summary>
    public StationFacts Fold(IReadOnlyList<StationStatement> chain)
    {
        int quarters = chain.Select(s => s.Turned).FirstOrDefault(t => t is not null) is { } turned ? QuartersOf(turned, chain[0]) : 0;
        var size = chain.Select(s => s.Size).FirstOrDefault(s => s is not null);
        var workers = chain.FirstOrDefault(s => s.Workers.Count > 0);
        var clears = chain.FirstOrDefault(s => s.Clears.Count > 0);
        var hung = chain.FirstOrDefault(s => s.Hung || s.Underside is not null);
        int TurnsOf(StationStatement? from) => ReferenceEquals(from, chain[0]) ? 0 : quarters;
        return new StationFacts
        {
            Label = chain.Select(s => s.Label?.Text).FirstOrDefault(l => l is not null),
            Width = size?.Width.Value,
            Depth = size is { Round: true } ? size.Width.Value : size?.Depth?.Value,
            Height = size?.Height?.Value,
            Round = size?.Round ?? false,
            Quarters = quarters,
            Hung = hung?.Hung ?? false,
            Bottom = hung?.Underside?.Value,
            WorkHeight = chain.Select(s => s.WorkHeight).FirstOrDefault(h => h is not null)?.Value,
            Movable = chain.Any(s => s.OnWheels),
            Workers = [.. (workers?.Workers ?? []).Select(w => new WorkerFacts(w.Side.Side.Turned(TurnsOf(workers)), CountOf(w), w.Apart?.Value))],
            Clears = [.. (clears?.Clears ?? []).Select(c => new ClearFacts(c.Side.Side.Turned(TurnsOf(clears)), c.Depth.Value, c.Purpose?.Text ?? "", c.Span))],
            Needs = NeedReader.Read(chain.FirstOrDefault(s => s.Needs.Count > 0)?.Needs ?? []),
            Wastes = [.. (chain.FirstOrDefault(s => s.Wastes.Count > 0)?.Wastes ?? []).Select(w => new Waste(w.Amount?.Value, w.To?.Text, w.Span))],
            Work = new Work
            {
                Kind = chain.Select(s => s.WorkKind).FirstOrDefault(w => w is not null)?.Text switch
                {
                    "precise" => WorkKind.Precise,
                    "light" => WorkKind.Light,
                    "heavy" => WorkKind.Heavy,
                    "cutting" => WorkKind.Cutting,
                    _ => null,
                },
                Each = chain.Select(s => s.WorkEach).FirstOrDefault(q => q is not null)?.Value,
                Batch = chain.Select(s => s.Batch).FirstOrDefault(q => q is not null)?.Value,
                Cycle = chain.Select(s => s.Cycle).FirstOrDefault(q => q is not null)?.Value,
                Stays = chain.Select(s => s.Stays).FirstOrDefault(q => q is not null)?.Value,
                Holds = chain.Select(s => s.Holds).FirstOrDefault(q => q is not null)?.Value,
            },
            WeightEmpty = chain.Select(s => s.WeightEmpty).FirstOrDefault(q => q is not null)?.Value,
            WeightFull = chain.Select(s => s.WeightFull).FirstOrDefault(q => q is not null)?.Value,
            Purpose = string.Join(' ', (chain.FirstOrDefault(s => s.Purpose.Count > 0)?.Purpose ?? []).Select(w => w.Text)),
            Circuit = chain.Select(s => s.Circuit).FirstOrDefault(t => t is not null)?.Text ?? "",
            AirGap = chain.Select(s => s.AirGap).FirstOrDefault(g => g is not null)?.Value,
            Inlet = chain.Select(s => s.Inlet).FirstOrDefault(i => i is not null)?.Value,
            Volume = chain.Select(s => s.Volume).FirstOrDefault(q => q is not null)?.Value,
        };
    }

    private int QuartersOf(NumberSyntax turned, StationStatement station)
    {
        const int RightAngle = 90;
        const int FullTurn = 360;
        decimal degrees = turned.Value % FullTurn;
        if (degrees % RightAngle != 0)
        {
            reports.Error(
                "turned-askew",
                FormattableString.Invariant($"`{station.Name?.Text}` is turned {turned.Value} degrees, but things stand square to the walls"),
                turned.Span,
                "write `turned 90`, `turned 180` or `turned 270`");
            return 0;
        }

        return (int)(degrees / RightAngle);
    }

    private int CountOf(WorkersSyntax workers)
    {
        if (workers.Count is < 1 or > MostWorkers)
        {
            reports.Error("worker-count", $"one side has 1 to {MostWorkers} workers", workers.Span, "write `worker south` or `workers 2 south`");
        }

        return Math.Clamp(workers.Count, 1, MostWorkers);
    }
}
