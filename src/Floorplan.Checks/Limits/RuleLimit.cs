using Floorplan.Language.Diagnostics;
using Floorplan.Model;
using Floorplan.Model.Limits;
using Floorplan.Sizing.Bodies;

namespace Floorplan.Checks.Limits;

/// <summary>One figure of a rule under one choice of code. A rule may give the same key several times, for different codes.</summary>
/// <param name="Key">What the figure is, for sentences: <c>walk from station to hand sink</c>.</param>
/// <param name="Value">In <paramref name="Unit"/>: millimetres for lengths, 2 for 2 %.</param>
/// <param name="Codes">Under which codes it applies; empty means all.</param>
/// <param name="Severity">As wished; <see cref="Source.Heaviest"/> bounds it. Error only for a confirmed binding law with a number.</param>
public sealed record RuleLimit(string Key, double Value, LimitUnit Unit, Source Source, Severity Severity, params CodeChoice[] Codes)
{
    /// <summary>A measure of people's bodies, in mm; the plan may be for other people than usual.</summary>
    public static RuleLimit OfBody(string key, BodySize size, Source source, Severity severity, params CodeChoice[] codes) =>
        new(key, size.Usual, LimitUnit.Millimetres, source, severity, codes) { Body = size };

    /// <summary>Which measure of whose body the figure is; null when it is none.</summary>
    public BodySize? Body { get; init; }

    /// <summary>The same figure for the people whom a plan is for.</summary>
    public RuleLimit For(People people) => Body is null || people == People.Usual
        ? this
        : this with { Value = Body.Of(people), Source = Source with { Title = $"{Source.Title}; people of this plan: {people.Text}" } };

    /// <summary>In a plan of the same trade in another place it is quoted in a note; else it is silent there.</summary>
    public bool Quoted { get; init; }

    /// <summary>How it stands to a plan: only where code, place, trade and plant match it binds.</summary>
    public ScopeFit FitsTo(PlanHead head) => Source.Scope.Of(head) switch
    {
        _ when !AppliesUnder(head.Code) => ScopeFit.None,
        ScopeFit.OtherPlace when !Quoted || head.Code == CodeChoice.None => ScopeFit.None,
        var fit => fit,
    };

    public bool AppliesUnder(CodeChoice code) => Codes.Length == 0 || Codes.Contains(code);
}
