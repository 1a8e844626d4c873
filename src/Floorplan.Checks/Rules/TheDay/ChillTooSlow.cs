using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Checks.Limits;
using Floorplan.Language.Diagnostics;
using Floorplan.Language.Quantities;
using Floorplan.Model;
using Floorplan.Model.Stations;
using Floorplan.Sizing.Processing;
using Floorplan.Sizing.Simulation.Line;
using Floorplan.Sizing.Simulation.Plans;

namespace Floorplan.Checks.Rules.TheDay;

/// <summary>Birds, of which published times are known. What the product's temperature really is comes with its own calculation.</summary>
internal sealed class ChillTooSlow : Rule
{
    private const string Light = "birds under 1.8 kg (4 lb) are cold within";
    private const string Middle = "birds of 1.8 to 3.6 kg (4 to 8 lb) are cold within";
    private const string Heavy = "birds over 3.6 kg (8 lb) are cold within";
    private const string InIce = "birds stay in ice water for at least";

    private const double FourPounds = 4 * InchPound.KilogramsPerPound;

    /// <summary>The lightest bird of the trial with ice water.</summary>
    private const double LightestOfTrial = 0.9;

    public override string Name => "chill-too-slow";

    public override RuleGroup Group => RuleGroup.TheDay;

    public override string Says => "Birds are cold too late after they come in, or stay in the chiller for less time than cooling takes.";

    public override string Why
        => "What is on the skin grows fast between 4 °C (40 °F) and body warmth, and a bird that is warm inside warms the cold store.";

    public override string Mend
        => "Give the chiller more room or the line more pace, so that each bird is in the cold early enough and for long enough.";

    public override IReadOnlyList<Source> Sources { get; } =
    [
        new(
            "former 9 CFR 381.66(b)(2), now guidance FSIS-GD-2014-0014: 4, 6 or 8 h to 40 °F by weight",
            Origin.FoundInPublicCopy, Force.Guidance),
        new(
            "trial with bare birds of 0.9 to 1.6 kg in ice water, 32 to 4.4 °C: 43 min, give or take 8",
            Origin.FoundInPublicCopy, Force.Measured),
    ];

    public override IReadOnlyList<RuleLimit> Limits =>
    [
        new(InIce, 35, LimitUnit.Minutes, Sources[1], Severity.Warning),
        new(Light, 240, LimitUnit.Minutes, Sources[0], Severity.Note),
        new(Middle, 360, LimitUnit.Minutes, Sources[0], Severity.Note),
        new(Heavy, 480, LimitUnit.Minutes, Sources[0], Severity.Note),
    ];

    public override string Bad => DayExamples.Line(
        "  work 4 s each\n  stays 20 min\n  holds 60 birds\n  needs ice", "  holds 5 shelves x 40 birds", crew: 1)
        .Replace("crates", "birds", StringComparison.Ordinal).Replace("\"Work bench\"", "\"Chill tank\"", StringComparison.Ordinal);

    public override IReadOnlyList<LineChange> Mended => [new("stays 20 min", "  stays 50 min"), new("holds 60", "  holds 120 birds")];

    public override bool AppliesTo(Plan plan) => KnownProcesses.IsOfPoultry(plan);

    public override IEnumerable<Finding> Check(CheckContext context)
        => ShortStays(context).Concat(context.Facts.Day is { Paced: { } paced } && Late(context, paced) is { } late ? [late] : []);

    private IEnumerable<Finding> ShortStays(CheckContext context)
    {
        bool isOfTrial = PlannedLine.ItemKilograms(context.Plan) >= LightestOfTrial;
        foreach (var station in context.Plan.Stations.Where(s => isOfTrial && s.Is(KnownProcess.Chilling)))
        {
            if (station.Stays is { Unit.Kind: QuantityKind.Time } stays && station.Needs.Any(n => n.Kind == NeedKind.Ice)
                && context.Limit(this, InIce) is { } limit && stays.Base / 60 < limit.Value)
            {
                yield return CheckContext.Find(
                    this, limit, stays.Base / 60, [station.Id],
                    $"{Named.Of(station)}: birds stay {QuantityText.Time(stays.Base)}; in ice water they take about "
                        + $"{QuantityText.Time(limit.Value * 60)} or more to be cold inside",
                    $"write `stays 50 min` in {station.Id}, and let it hold as many more as come in that time",
                    station.Span, station.Footprint.Centroid.Coordinate);
            }
        }
    }

    private Finding? Late(CheckContext context, LineOutcome paced)
    {
        var stations = context.Facts.Day.Planned.Stations.OfType<Station>().ToList();
        if (PlannedLine.ItemKilograms(context.Plan) is not { } each
            || (stations.Find(s => s.Is(KnownProcess.Chilling)) ?? stations.LastOrDefault()) is not { } last)
        {
            return null;
        }

        string key = each < FourPounds ? Light : each <= 2 * FourPounds ? Middle : Heavy;
        double seconds = Ticks.Seconds((long)paced.TimeOnLine);
        return context.Limit(this, key) is { } limit && seconds / 60 > limit.Value
            ? CheckContext.Find(
                this, limit, seconds / 60, [last.Id],
                $"a bird is on the line for {QuantityText.Time(seconds)} on average until it is out and cold; {key} "
                    + $"{QuantityText.Time(limit.Value * 60)}",
                "`floorplan day` shows where birds wait; more room in the chiller or more hands before it shorten that",
                last.Span, last.Footprint.Centroid.Coordinate)
            : null;
    }
}
