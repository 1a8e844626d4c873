using Floorplan.Language.Diagnostics;
using Floorplan.Language.Syntax;
using Floorplan.Language.Syntax.Statements;
using Floorplan.Language.Text;

namespace Floorplan.Model.Binding;

/// <summary>
/// What mistakes of a text follow from: a line that could not be read. A name that nothing has is told at its first place, with the
/// other places beside it.
/// </summary>
internal static class FollowOns
{
    /// <summary>Other places of one unknown name that are shown; own choice.</summary>
    private const int MostPlaces = 3;

    /// <summary>Stands for the whole plan.</summary>
    private const string Plan = "";

    /// <summary>
    /// What a mistake says is missing, and the details that would have said it. A head line may always have been meant to.
    /// </summary>
    private static readonly Dictionary<string, string[]> Missing = new()
    {
        ["in-no-room"] = ["in"],
        ["size-missing"] = ["size", "round"],
        ["place-missing"] = ["place"],
        ["room-without-shape"] = ["from", "area", "to"],
        ["eaves-missing"] = ["eaves", "corners"],
        ["hole-incomplete"] = ["height", "size"],
    };

    public static IReadOnlyList<Diagnostic> Drop(IReadOnlyList<Diagnostic> all, SyntaxTree tree)
    {
        var statements = new StatementsByPlace(tree);
        var slips = tree.Diagnostics.Where(d => d.Severity == Severity.Error).ToHashSet(ReferenceEqualityComparer.Instance);
        FollowsFrom<Diagnostic>[] relations =
        [
            // A thing's own mistake is told; that others cannot find it follows from that.
            .. new[] {
                "unknown-name", "unknown-stop" }.Select(code
                    => new FollowsFrom<Diagnostic>(code, d => d.Severity == Severity.Error
                        && !IsUnknownName(d), d => Given(d, statements), d => [d.Span.Value])),
            // What a kind would have said.
            new("size-missing", d => d.Code == "unknown-kind", d => Owner(d, statements), d => Owner(d, statements)),
            new("size-missing", d => d.Code == "kinds-give-too-much", _ => [Plan], d => TakesFromKind(d, statements) ? [Plan] : []),
            new("shell-missing", d => slips.Contains(d) && IsUnknownStatement(d), _ => [Plan], _ => [Plan]),
            new("floor-without-room", d => slips.Contains(d)
                && statements.At(d.Span) is RoomStatement or PartitionsStatement, _ => [Plan], _ => [Plan]),
            .. Missing.Select(m => new FollowsFrom<Diagnostic>(m.Key, slips.Contains, d => Owner(d, statements), d => Owner(d, statements))
            {
                When = (missing, slip) => CouldSay(statements.At(missing.Span)!, slip, m.Value),
            }),
        ];
        return ToldOnce.Keep(
            [.. all.OrderBy(IsUnknownName).ThenBy(d => IsUnknownName(d) ? d.Span.Start : 0)], d
                => d.Code, relations, d => IsUnknownName(d) ? d.Span.Value : null, Together);
    }

    /// <summary>The name that a line gives, though it has a mistake; of a line that begins with no known word, its second word.</summary>
    private static IEnumerable<string> Given(Diagnostic d, StatementsByPlace statements)
    {
        if (statements.At(d.Span)?.Name?.Text is { } name)
        {
            yield return name;
        }

        if (IsUnknownStatement(d))
        {
            yield return Words(d).ElementAtOrDefault(1) ?? "";
        }
    }

    private static IEnumerable<string> Owner(Diagnostic d, StatementsByPlace statements) =>
        statements.At(d.Span) is { } owner ? [FormattableString.Invariant($"{owner.HeadSpan.Start}")] : [];

    private static bool TakesFromKind(Diagnostic d, StatementsByPlace statements)
        => statements.At(d.Span) is StationStatement { Kind: not null };

    private static bool IsUnknownStatement(Diagnostic d) => d.Code == "unknown-statement";

    private static bool IsUnknownName(Diagnostic d) => d.Code is "unknown-name" or "unknown-stop";

    private static bool CouldSay(Statement owner, Diagnostic slip, string[] words)
    {
        int line = slip.Span.Position.Line;
        string first = Words(slip).FirstOrDefault() ?? "";
        return line == owner.HeadSpan.Position.Line
            || words.Contains(first, StringComparer.OrdinalIgnoreCase)
            || NearNames.Find(first, words).Count > 0;
    }

    /// <summary>Of the line that it is about.</summary>
    private static string[] Words(Diagnostic d)
        => d.Span.Source.Line(d.Span.Position.Line).Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries);

    private static Diagnostic Together(IReadOnlyList<Diagnostic> same) => same[0] with
    {
        Related =
        [
            .. same[0].Related ?? [],
            .. same.Skip(1).Take(MostPlaces)
                .Select((d, i) => new RelatedSpan(d.Span, i + 1 == MostPlaces && same.Count - 1 > MostPlaces
                    ? $"named here too, and in {same.Count - 1 - MostPlaces} more places"
                    : "named here too")),
        ],
    };

    /// <summary>The statement that a place belongs to: the last one that starts at or before it.</summary>
    private sealed class StatementsByPlace(SyntaxTree tree)
    {
        private readonly int[] starts = [.. tree.Statements.Select(s => s.HeadSpan.Start)];

        public Statement? At(SourceSpan span)
        {
            if (!ReferenceEquals(span.Source, tree.Source))
            {
                return null;
            }

            int index = Array.BinarySearch(starts, span.Start);
            index = index < 0 ? ~index - 1 : index;
            return index < 0 ? null : tree.Statements[index];
        }
    }
}
