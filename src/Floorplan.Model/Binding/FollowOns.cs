using Floorplan.Language.Diagnostics;
using Floorplan.Language.Syntax;
using Floorplan.Language.Syntax.Statements;
using Floorplan.Language.Text;

namespace Floorplan.Model.Binding;

/// <summary>
/// One slip is told once. What only follows from a line that could not be read goes, and a name that nothing has is told
/// at its first place, with the other places beside it.
/// </summary>
internal static class FollowOns
{
    /// <summary>Other places of one unknown name that are shown; own choice.</summary>
    private const int MostPlaces = 3;

    /// <summary>What a mistake says is missing, and the details that would have said it. A head line may always have been meant to.</summary>
    private static readonly Dictionary<string, string[]> Missing = new()
    {
        ["in-no-room"] = ["in"],
        ["size-missing"] = ["size", "round"],
        ["place-missing"] = ["place"],
        ["room-without-shape"] = ["from", "area", "to"],
        ["eaves-missing"] = ["eaves", "corners"],
        ["hole-incomplete"] = ["height", "size"],
    };

    public static IEnumerable<Diagnostic> Drop(IReadOnlyList<Diagnostic> all, SyntaxTree tree)
    {
        var statements = new StatementsByPlace(tree);
        Diagnostic[] slips = [.. tree.Diagnostics.Where(d => d.Severity == Severity.Error)];
        var given = GivenWithMistakes(all, slips, statements);
        var unread = slips.ToLookup(s => statements.At(s.Span));
        bool roomUnread = unread.Any(g => g.Key is RoomStatement or PartitionsStatement);
        bool shellUnread = slips.Any(IsUnknownStatement);
        return OncePerName(all.Where(d => !Follows(d)));

        bool Follows(Diagnostic d) => d.Code switch
        {
            "unknown-name" or "unknown-stop" => given.Contains(d.Span.Value),
            "shell-missing" => shellUnread,
            "floor-without-room" => roomUnread,
            _ => slips.Length > 0 && Missing.TryGetValue(d.Code, out string[]? words) && statements.At(d.Span) is { } owner && unread[owner].Any(s => CouldSay(owner, s, words)),
        };
    }

    // Their own mistake is told; that others cannot find them follows from it.
    private static HashSet<string> GivenWithMistakes(IEnumerable<Diagnostic> all, IEnumerable<Diagnostic> slips, StatementsByPlace statements)
    {
        var names = slips.Where(IsUnknownStatement).Select(SecondWord);
        var owners = all.Where(d => d.Severity == Severity.Error && !IsUnknownName(d)).Select(d => statements.At(d.Span)).OfType<Statement>();
        return owners.Select(s => s.Name?.Text).OfType<string>().Concat(names).ToHashSet(StringComparer.Ordinal);
    }

    private static bool IsUnknownStatement(Diagnostic d) => d.Code == "unknown-statement";

    private static bool IsUnknownName(Diagnostic d) => d.Code is "unknown-name" or "unknown-stop";

    private static bool CouldSay(Statement owner, Diagnostic slip, string[] words)
    {
        int line = slip.Span.Position.Line;
        string first = Words(slip).FirstOrDefault() ?? "";
        return line == owner.HeadSpan.Position.Line || words.Contains(first, StringComparer.OrdinalIgnoreCase) || NearNames.Find(first, words).Count > 0;
    }

    private static string SecondWord(Diagnostic d) => Words(d).ElementAtOrDefault(1) ?? "";

    /// <summary>Of the line that it is about.</summary>
    private static string[] Words(Diagnostic d)
        => d.Span.Source.Line(d.Span.Position.Line).Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries);

    private static IEnumerable<Diagnostic> OncePerName(IEnumerable<Diagnostic> all)
    {
        var kept = new List<Diagnostic>();
        var places = new Dictionary<string, List<Diagnostic>>(StringComparer.Ordinal);
        foreach (var d in all.OrderBy(d => IsUnknownName(d) ? d.Span.Start : 0))
        {
            if (!IsUnknownName(d))
            {
                kept.Add(d);
            }
            else if (places.TryGetValue(d.Span.Value, out var seen))
            {
                seen.Add(d);
            }
            else
            {
                places[d.Span.Value] = [d];
            }
        }

        return kept.Concat(places.Values.Select(Together));
    }

    private static Diagnostic Together(List<Diagnostic> same) => same.Count == 1 ? same[0] : same[0] with
    {
        Related =
        [
            .. same[0].Related ?? [],
            .. same.Skip(1).Take(MostPlaces).Select((d, i) => new RelatedSpan(d.Span, i + 1 == MostPlaces && same.Count - 1 > MostPlaces ? $"named here too, and in {same.Count - 1 - MostPlaces} more places" : "named here too")),
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
