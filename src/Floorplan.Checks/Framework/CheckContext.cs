using Floorplan.Checks.Findings;
using Floorplan.Checks.Limits;
using Floorplan.Language.Diagnostics;
using Floorplan.Language.Quantities;
using Floorplan.Language.Text;
using Floorplan.Model;
using Floorplan.Model.Space;
using Floorplan.Sizing;
using Floorplan.Sizing.Power;
using NetTopologySuite.Geometries;

namespace Floorplan.Checks.Framework;

/// <summary>What a rule may look at, and how it words what it finds. For one thread.</summary>
public sealed class CheckContext(PlanFacts facts)
{
    private readonly PlanLimits limits = new(facts.Plan);

    /// <summary>What is worked out from the plan: a rule judges it and computes nothing that a sheet or another rule shows too.</summary>
    public PlanFacts Facts { get; } = facts;

    public Plan Plan => Facts.Plan;

    public FloorSpace Space => Facts.Space;

    /// <summary>What the rules before this one found, for the few rules about the file itself.</summary>
    public IReadOnlyList<Finding> Found { get; internal set; } = [];

    /// <summary>The figure of a rule that holds for this plan; null when none applies under its code.</summary>
    public AppliedLimit? Limit(Rule rule, string key) => limits.Find(rule, key);

    /// <summary>The rule's first figure, the one that <c>limit</c> sets.</summary>
    public AppliedLimit? Limit(Rule rule) => limits.Find(rule, rule.Limits[0].Key);

    /// <summary>How deep the floor before a panel is to be free; null where no figure holds.</summary>
    public AppliedLimit? PanelDepth(WorkingSpace space) => PanelDepths.For(limits, space);

    /// <summary>Of a rule's sources the one that binds this plan; the practice of the trade where none does.</summary>
    public Source SourceOf(Rule rule) => rule.SourceFor(Plan);

    /// <summary>All figures of a rule that hold for this plan, as <see cref="PlanLimits.Holding"/> says.</summary>
    public IReadOnlyList<AppliedLimit> Holding(Rule rule) => limits.Holding(rule);

    /// <summary>In the plan's units: <c>2600 mm</c> or <c>8'-6 1/2"</c>.</summary>
    public string Text(Length length) => QuantityText.Length(length, Plan.Units);

    /// <summary>In the plan's units, rounded to whole millimetres or 1/16 in.</summary>
    public string Text(double millimetres) => Text(Length.FromMillimetres(Math.Round(millimetres)));

    /// <summary>For walks: <c>7.6 m</c> or <c>24.9 ft</c>.</summary>
    public string Walk(double millimetres) => QuantityText.Distance(millimetres, Plan.Units);

    /// <summary>Any other quantity, in the base unit of its measure: <c>13.4 m²</c> or <c>144 sq ft</c>.</summary>
    public string Text(double value, Measure measure) => QuantityText.Of(value, measure, Plan.Units);

    /// <summary>For floors: <c>13.4 m²</c> or <c>144 sq ft</c>.</summary>
    public string Area(double squareMetres) => Text(squareMetres, Measure.Area);

    /// <summary><c>1400 kg</c> or <c>3086 lb</c>, small weights to a tenth.</summary>
    public string Weight(double kilograms) => Text(kilograms, Measure.Mass);

    /// <summary><c>540 lux</c> or <c>50.2 fc</c>.</summary>
    public string Light(double lux) => Text(lux, Measure.Illuminance);

    /// <summary><c>300 m³/h</c> or <c>177 cfm</c>, from m3/s.</summary>
    public string Air(double cubicMetresPerSecond) => Text(cubicMetresPerSecond, Measure.AirFlow);

    /// <summary>For rooms: <c>32.1 m³</c> or <c>1134 cu ft</c>.</summary>
    public string Volume(double cubicMetres) => Text(cubicMetres, Measure.Volume);

    /// <summary><c>82 °C</c> or <c>180 °F</c>.</summary>
    public string Temperature(double celsius) => Text(celsius, Measure.Temperature);

    /// <summary>A share that a rule keeps in percent: <c>12.5 %</c>.</summary>
    public string Percent(double percent) => LimitUnits.Text(percent, LimitUnit.Percent, Plan.Units);

    /// <summary>A finding without a published figure.</summary>
    public static Finding Find(
        Rule rule, Severity severity, IReadOnlyList<string> things, string message, string mend, SourceSpan span,
        Coordinate? at = null) => new()
        {
            Rule = rule.Name,
            Severity = severity,
            Things = things,
            Message = message,
            Mend = mend,
            Span = span,
            At = at,
        };

    /// <summary>A finding that judges a worked-out value, which sheets may show too.</summary>
    /// <param name="measured">In the unit of the limit when its value is.</param>
    public static Finding Find(
        Rule rule, AppliedLimit limit, Figure measured, IReadOnlyList<string> things, string message, string mend, SourceSpan span,
        Coordinate? at = null)
        => Find(rule, limit, measured.Value, things, message, mend, span, at) with { Figures = [measured] };

    /// <summary>A finding against a figure; weight and limit text come from the figure.</summary>
    public static Finding Find(
        Rule rule, AppliedLimit limit, double measured, IReadOnlyList<string> things, string message, string mend, SourceSpan span,
        Coordinate? at = null)
        => Find(rule, limit.Severity, things, message, mend, span, at) with
        {
            Limit = limit.Text,
            Measured = measured,
            LimitValue = limit.Value,
        };
}
