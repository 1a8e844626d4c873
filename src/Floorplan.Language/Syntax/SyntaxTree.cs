using Floorplan.Language.Diagnostics;
using Floorplan.Language.Parsing;
using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax.Statements;
using Floorplan.Language.Text;
using Floorplan.Language.Tokens;

namespace Floorplan.Language.Syntax;

/// <summary>
/// A whole file as tokens and statements. Its tokens lie end to end, so that printing them gives the file back byte for byte.
/// </summary>
public sealed class SyntaxTree
{
    internal SyntaxTree(
        SourceText source, IReadOnlyList<Token> tokens, IReadOnlyList<Statement> statements, IReadOnlyList<Diagnostic> diagnostics,
        UnitSystem units, IReadOnlyList<int>? headStarts)
    {
        Source = source;
        Tokens = tokens;
        Statements = statements;
        Diagnostics = diagnostics;
        Units = units;
        HeadStarts = headStarts;
    }

    public SourceText Source { get; }

    public IReadOnlyList<Token> Tokens { get; }

    public IReadOnlyList<Statement> Statements { get; }

    /// <summary>Every mistake of the text, in the order of the file.</summary>
    public IReadOnlyList<Diagnostic> Diagnostics { get; }

    /// <summary>What bare numbers were read in.</summary>
    public UnitSystem Units { get; }

    /// <summary>
    /// Where each head line's first word starts, also of lines that are no statement; null when the file was not read to its end.
    /// </summary>
    internal IReadOnlyList<int>? HeadStarts { get; }

    /// <summary>Reads a whole file. Never throws for what the text says; time grows with its length.</summary>
    /// <param name="source">The text.</param>
    /// <param name="bareUnits">Units of bare numbers when the file has no <c>units</c> of its own: those of the plan that uses it.</param>
    public static SyntaxTree Parse(SourceText source, UnitSystem bareUnits = UnitSystem.Metric) => FileParser.Parse(source, bareUnits);

    /// <summary>The file again, byte for byte.</summary>
    public string ToText() => string.Concat(Tokens.Select(t => Source.Content.Substring(t.Start, t.Length)));
}
