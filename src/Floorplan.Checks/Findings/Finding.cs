using Floorplan.Checks.Mending;
using Floorplan.Language.Diagnostics;
using Floorplan.Language.Text;
using Floorplan.Model.Limits;
using NetTopologySuite.Geometries;

namespace Floorplan.Checks.Findings;

/// <summary>One fault on one plan.</summary>
public sealed record Finding
{
    public required string Rule { get; init; }

    public required Severity Severity { get; init; }

    /// <summary>Ids of the things it is about; <c>accept … at</c> names these.</summary>
    public required IReadOnlyList<string> Things { get; init; }

    /// <summary>What is wrong, in one plain sentence with the measured value; no full stop.</summary>
    public required string Message { get; init; }

    /// <summary>
    /// The limit with its source, as a clause: <c>limit 7.6 m (FDA/CFP Plan Review Guide 2000, Part 4)</c>; empty without a figure.
    /// </summary>
    public string Limit { get; init; } = "";

    /// <summary>What would mend it here, with numbers where known.</summary>
    public required string Mend { get; init; }

    /// <summary>A whole line of the plan language that would mend it; null when there is none.</summary>
    public string? NewLine { get; init; }

    /// <summary>Words that the statement of its thing lacks, such as <c>opens from inside</c>; null when there are none.</summary>
    public string? NewWords { get; init; }

    /// <summary>Words of its statement that others in their place would mend; null when there are none.</summary>
    public WordSwap? Swap { get; init; }

    /// <summary>A change of the text that mends it and makes nothing worse, proven; null when none was looked for or found.</summary>
    public Proposal? Proposal { get; init; }

    public required SourceSpan Span { get; init; }

    /// <summary>Where to mark it on the plan (plan mm); null when it has no place.</summary>
    public Coordinate? At { get; init; }

    /// <summary>Measured value and limit in the rule's unit, for machines; null without a figure.</summary>
    public double? Measured { get; init; }

    public double? LimitValue { get; init; }

    /// <summary>The worked-out values that its sentence prints or judges; the same objects as on the sheets.</summary>
    public IReadOnlyList<Figure> Figures { get; init; } = [];

    /// <summary>Its things stand where they cannot, so that what else is wrong with their place follows from it.</summary>
    public bool Misplaced { get; init; }

    /// <summary>The statement that accepts it; null when it stands.</summary>
    public Acceptance? AcceptedBy { get; init; }

    /// <summary>For people: <c>error</c>, <c>warning</c>, <c>note</c>, <c>accepted</c>.</summary>
    public string SeverityWord => AcceptedBy is null ? DiagnosticText.Word(Severity) : "accepted";

    /// <summary>One for all findings of one rule on the same things.</summary>
    internal string Key => Rule + '\n' + string.Join('\n', Things.Order(StringComparer.Ordinal));
}
