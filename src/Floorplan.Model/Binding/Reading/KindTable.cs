using Floorplan.Language.Details;
using Floorplan.Language.Diagnostics;
using Floorplan.Language.Syntax.Statements;
using Floorplan.Language.Syntax.Values;

namespace Floorplan.Model.Binding.Reading;

/// <summary>
/// The kinds of a plan and of the files that it uses. A station takes every detail of its kind that it does not give
/// itself; a kind may take from another kind in the same way.
/// </summary>
internal sealed class KindTable(Reports reports)
{
    /// <summary>Kinds of kinds of kinds: more than this is a slip; own bound.</summary>
    internal const int LongestChain = 8;

    private readonly Dictionary<string, StationStatement> kinds = new(StringComparer.Ordinal);
    private readonly RunningTotal taken = new(PlanBounds.MostTaken);

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
                    reports.Near(wanted.Text, kinds.Keys)
                        ?? "describe it with `kind`, or add `kinds from` and the file or the shelf that has it");
                break;
            }

            if (chain.Contains(kind))
            {
                reports.Error(
                    "kind-circle", $"the kind `{wanted.Text}` takes its details from itself", wanted.Span,
                    "let one of the kinds stand alone");
                break;
            }

            if (chain.Count > LongestChain)
            {
                reports.Error(
                    "kind-too-deep", $"more than {LongestChain} kinds take their details from one another here", wanted.Span,
                    "take from an earlier kind");
                break;
            }

            chain.Add(kind);
        }

        return IsWithinBounds(chain) ? chain : [statement];
    }

    private bool IsWithinBounds(List<StationStatement> chain) => taken.Add(
        chain.Skip(1).Sum(k => k.Details.Count),
        () => reports.Error(
            "kinds-give-too-much", $"the things of a plan take at most {PlanBounds.MostTaken} details from kinds together",
            chain[0].HeadSpan, "take details out of the kind that many things are like"));

    /// <summary>Quarter turns clockwise, from the nearest statement that says them.</summary>
    public int QuartersOf(IReadOnlyList<StationStatement> chain) =>
        chain.Select(s => s.Value(StationDetails.Turned)).FirstOrDefault(t => t is not null) is { } turned
            ? QuartersOf(turned, chain[0])
            : 0;

    private int QuartersOf(NumberSyntax turned, StationStatement station)
    {
        const int RightAngle = 90;
        const int FullTurn = 360;
        decimal degrees = turned.Value % FullTurn;
        if (degrees % RightAngle != 0)
        {
            reports.Error(
                "turned-askew",
                FormattableString.Invariant(
                    $"`{station.Name?.Text}` is turned {turned.Value} degrees, but things stand square to the walls"),
                turned.Span,
                "write `turned 90`, `turned 180` or `turned 270`");
            return 0;
        }

        return (int)(degrees / RightAngle);
    }
}
