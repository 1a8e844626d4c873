using Floorplan.Language.Diagnostics;
using Floorplan.Language.Parsing;
using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax;
using Floorplan.Language.Syntax.Statements;
using Floorplan.Language.Text;
using Floorplan.Model.Binding.Files;

namespace Floorplan.Model.Binding.Reading;

/// <summary>Follows <c>kinds from</c> statements and gathers the kinds of the files that they name. Each file is read once.</summary>
internal sealed class UsedFiles(IPlanFiles files, KindTable kinds, UnitSystem units, Reports reports)
{
    private readonly HashSet<string> read = new(StringComparer.Ordinal);
    private readonly RunningTotal characters = new(Bounds.MostCharacters);

    public void Follow(SyntaxTree tree) => Follow(tree, [tree.Source.Path]);

    private void Follow(SyntaxTree tree, IReadOnlyList<string> path)
    {
        foreach (var use in tree.Statements.OfType<KindsFromStatement>())
        {
            if (use.Path is { } name)
            {
                Open(tree.Source, name.Text, name.Span, path);
            }
        }
    }

    private void Open(SourceText from, string name, SourceSpan span, IReadOnlyList<string> path)
    {
        var file = PartsShelf.Holds(name) ? PartsShelf.Read(name) : files.Read(from, name);
        if (file.Source is not { } source)
        {
            reports.Error("kinds-not-read", file.Problem, span, file.Help);
            return;
        }

        if (path.Contains(source.Path))
        {
            reports.Error(
                "kinds-circle",
                $"`{source.Path}` reads kinds from itself: {string.Join(", ", path.SkipWhile(p => p != source.Path))}, and back to "
                    + $"`{source.Path}`", span, "take one of the `kinds from` lines out");
            return;
        }

        if (path.Count > PlanBounds.DeepestFiles)
        {
            reports.Error(
                "kinds-too-deep", $"files read kinds from files more than {PlanBounds.DeepestFiles} deep here", span,
                "name the last file in the plan itself");
            return;
        }

        if (!read.Add(source.Path))
        {
            return;
        }

        if (read.Count > PlanBounds.MostFiles)
        {
            if (read.Count == PlanBounds.MostFiles + 1)
            {
                reports.Error(
                    "kinds-too-many", $"a plan reads kinds from at most {PlanBounds.MostFiles} files", span,
                    "put several kinds into one file");
            }

            return;
        }

        if (!IsWithinBounds(source, span))
        {
            return;
        }

        var tree = SyntaxTree.Parse(source, units);
        foreach (var diagnostic in tree.Diagnostics)
        {
            reports.Add(diagnostic);
        }

        TakeKinds(tree);
        Follow(tree, [.. path, source.Path]);
    }

    /// <summary>A file that alone is too large is told when it is read.</summary>
    private bool IsWithinBounds(SourceText source, SourceSpan span)
    {
        bool isTooLongAlone = source.Content.Length > Bounds.MostCharacters;
        bool isWithin = characters.Add(source.Content.Length, () =>
        {
            if (!isTooLongAlone)
            {
                reports.Error(
                    "kinds-too-long",
                    $"the files that a plan reads kinds from hold at most {Bounds.MostCharacters / 1_000_000} million characters together",
                    span,
                    "name only the files whose kinds the plan uses");
            }
        });
        return isWithin || isTooLongAlone;
    }

    private void TakeKinds(SyntaxTree tree)
    {
        foreach (var statement in tree.Statements)
        {
            if (statement is StationStatement { Keyword.Text: "kind" } kind)
            {
                kinds.Add(kind);
            }
            else if (statement is not (KindsFromStatement or PlanStatement))
            {
                reports.Add(new Diagnostic(
                    Severity.Warning,
                    "only-kinds-are-read",
                    $"`{statement.Keyword.Text}` in a file of kinds has no effect; only its kinds are taken",
                    statement.HeadSpan,
                    "move it to the plan, or make it a `kind`"));
            }
        }
    }
}
