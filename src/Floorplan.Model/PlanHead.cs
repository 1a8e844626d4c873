using Floorplan.Language.Quantities;
using Floorplan.Language.Text;
using Floorplan.Model.Rates;

namespace Floorplan.Model;

/// <summary>What the <c>plan</c> statement says; fills the title block.</summary>
public sealed record PlanHead
{
    public required string Title { get; init; }

    public string Number { get; init; } = "";

    public UnitSystem Units { get; init; } = UnitSystem.Metric;

    public CodeChoice Code { get; init; } = CodeChoice.None;

    /// <summary>Where it stands, in small letters: <c>de</c>, <c>us-wa</c>; empty when not said.</summary>
    public string Country { get; init; } = "";

    /// <summary>What it makes; empty when not said.</summary>
    public IReadOnlyList<Trade> Trades { get; init; } = [];

    /// <summary>In the United States; null when not said.</summary>
    public PlantOf? Plant { get; init; }

    public IReadOnlyList<Revision> Revisions { get; init; } = [];

    public IReadOnlyList<Product> Products { get; init; } = [];

    /// <summary>Whose bodies it is laid out for.</summary>
    public People People { get; init; } = People.Usual;

    /// <summary>Null when not said.</summary>
    public Climate? Climate { get; init; }

    /// <summary>The water that comes in; null when not said.</summary>
    public Mains? Mains { get; init; }

    /// <summary>That the unit has to stand in; null when not said.</summary>
    public Wind? Wind { get; init; }

    /// <summary>The owner's prices; null when the plan names none, or they cannot be read.</summary>
    public RateList? Rates { get; init; }

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

/// <summary>The days that the unit is sized for.</summary>
/// <param name="Summer">Null when not said.</param>
/// <param name="Humidity">Of the air of the summer day, from 0 to 1; null when not said.</param>
public sealed record Climate(Quantity Winter, Quantity? Summer, Quantity? Humidity, SourceSpan Span);

/// <summary>Water where it comes in.</summary>
/// <param name="Temperature">The coldest of the year; null when not said.</param>
public sealed record Mains(Quantity Pressure, Quantity? Temperature, SourceSpan Span);

/// <summary>By <c>code us</c> a gust of 3 seconds, else the basic mean of 10 minutes.</summary>
public sealed record Wind(Quantity Speed, SourceSpan Span);

/// <summary>One row of the revision table; the date is as written, ISO 8601.</summary>
public sealed record Revision(string Mark, string Date, string Text);

/// <summary>A product unit, such as <c>fish, 0.9 kg each</c>.</summary>
public sealed record Product(string Unit, Quantity? WeightEach);
