using Floorplan.Language.Quantities;
using Floorplan.Language.Text;

namespace Floorplan.Model;

/// <summary>What the <c>plan</c> statement says; fills the title block.</summary>
public sealed record PlanHead
{
    public required string Title { get; init; }

    public string Number { get; init; } = "";

    public UnitSystem Units { get; init; } = UnitSystem.Metric;

    public CodeChoice Code { get; init; } = CodeChoice.None;

    public IReadOnlyList<Revision> Revisions { get; init; } = [];

    public IReadOnlyList<Product> Products { get; init; } = [];

    /// <summary>Whose bodies it is laid out for.</summary>
    public People People { get; init; } = People.Usual;

    public string Owner { get; init; } = "";

    public string Site { get; init; } = "";

    public string DrawnBy { get; init; } = "";

    public string CheckedBy { get; init; } = "";

    public IReadOnlyList<string> Notes { get; init; } = [];

    public SourceSpan Span { get; init; }
}

/// <summary>Which published limits the checks start from.</summary>
public enum CodeChoice
{
    None,
    Us,
    Eu,
}

public static class CodeChoices
{
    /// <summary>As a plan writes it: <c>us</c>, <c>eu</c>, <c>none</c>.</summary>
    public static string Word(this CodeChoice code) => code.ToString().ToLowerInvariant();
}

/// <summary>One row of the revision table; the date is as written, ISO 8601.</summary>
public sealed record Revision(string Mark, string Date, string Text);

/// <summary>A product unit, such as <c>fish, 0.9 kg each</c>.</summary>
public sealed record Product(string Unit, Quantity? WeightEach);
