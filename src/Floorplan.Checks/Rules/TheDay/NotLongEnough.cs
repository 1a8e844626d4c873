using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Checks.Limits;
using Floorplan.Language.Diagnostics;
using Floorplan.Language.Quantities;
using Floorplan.Model;
using Floorplan.Model.Stations;
using Floorplan.Sizing.Processing;

namespace Floorplan.Checks.Rules.TheDay;

/// <summary>Bleeding and scalding of birds, and pasteurising, known by the words of the station.</summary>
internal sealed class NotLongEnough : Rule
{
    private const string Bleeding = "birds bleed";
    private const string SoftScald = "birds scald below 54 °C";
    private const string MiddleScald = "birds scald from 54 °C";
    private const string HardScald = "birds scald from 59 °C";
    private const string LongHeat = "pasteurising from 63 °C";
    private const string ShortHeat = "pasteurising from 72 °C";

    /// <summary>Half a degree is a rounding of a thermometer or of 145 °F.</summary>
    private const double Tolerance = 0.5;

    public override string Name => "not-long-enough";

    public override RuleGroup Group => RuleGroup.TheDay;

    public override string Says => "The product stays for less time than the step needs to do its work.";

    public override string Why
        => "A bird that has not bled out breathes scald water, feathers hold after a short scald, and milk that was hot for too short a "
            + "time is raw milk. To go faster is no help then: more places are.";

    public override string Mend => "Let it stay as long as the figure says, and give the station as many more places as that takes.";

    public override string? Caution
        => "A figure on paper is no proof: measure the time and the temperature of the first batches, and write them down.";

    public override IReadOnlyList<Source> Sources { get; } =
    [
        new("Quebec P-29, r.1, 6.4.3: scalding at least 90 s after bleeding begins", Origin.FoundInPublicCopy, Force.Law),
        new(
            "Barbut 2002, quoted: soft scald 50 to 53 °C, 120 s; hard scald 59 to 64 °C, 45 to 90 s",
            Origin.FoundInPublicCopy, Force.Guidance),
        new("DVS poultry code 2017, Malaysia, quoted: sub-scald 54 to 58 °C, 60 to 120 s", Origin.FoundInPublicCopy, Force.Guidance),
        new("Reg (EC) 853/2004 Annex III s.IX ch.II: 72 °C for 15 s or 63 °C for 30 min; PMO the same", Origin.FromMemory, Force.Law),
    ];

    public override IReadOnlyList<RuleLimit> Limits =>
    [
        new(Bleeding, 1.5, LimitUnit.Minutes, Sources[0], Severity.Warning),
        new(SoftScald, 2, LimitUnit.Minutes, Sources[1], Severity.Note),
        new(MiddleScald, 1, LimitUnit.Minutes, Sources[2], Severity.Note),
        new(HardScald, 0.75, LimitUnit.Minutes, Sources[1], Severity.Note),
        new(LongHeat, 30, LimitUnit.Minutes, Sources[3], Severity.Warning),
        new(ShortHeat, 0.25, LimitUnit.Minutes, Sources[3], Severity.Warning),
    ];

    public override string Bad => DayExamples
        .Line("  work 4 s each\n  stays 60 s\n  holds 6 birds", "  holds 5 shelves x 40 birds", crew: 1)
        .Replace("crates", "birds", StringComparison.Ordinal).Replace("\"Work bench\"", "\"Bleeding cones\"", StringComparison.Ordinal);

    public override IReadOnlyList<LineChange> Mended => [new("stays 60 s", "  stays 2 min")];

    public override bool AppliesTo(Plan plan) => plan.Stations.Any(s => (s.Stays ?? s.Cycle) is not null);

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        bool isPoultry = KnownProcesses.IsOfPoultry(context.Plan);
        foreach (var station in context.Plan.Stations)
        {
            if ((station.Stays ?? station.Cycle) is { Unit.Kind: QuantityKind.Time } stays
                && KeyOf(station, isPoultry) is { } key && context.Limit(this, key) is { } limit && stays.Base / 60 < limit.Value - 1e-9)
            {
                string word = station.Stays is null ? "cycle" : "stays";
                yield return CheckContext.Find(
                    this, limit, stays.Base / 60, [station.Id],
                    $"{Named.Of(station)}: the product stays {QuantityText.Time(stays.Base)}; {key} it is at least "
                        + $"{QuantityText.Time(limit.Value * 60)}",
                    $"write `{word} {QuantityText.Time(limit.Value * 60)}` in {station.Id}, and as "
                        + "many more places as that takes",
                    station.Span, station.Footprint.Centroid.Coordinate) with
                {
                    Swap = new WordSwap(
                        FormattableString.Invariant($"{word} {stays.Number} {stays.Unit.Symbol}"),
                        $"{word} {QuantityText.Time(limit.Value * 60)}"),
                };
            }
        }
    }

    private static string? KeyOf(Station station, bool isPoultry)
    {
        double? celsius = station.Needs.Select(n => n.At).FirstOrDefault(t => t is { Unit.Kind: QuantityKind.Temperature })?.Base;
        return station switch
        {
            _ when isPoultry && station.Is(KnownProcess.Bleeding) => Bleeding,
            _ when isPoultry && station.Is(KnownProcess.Scalding) && celsius is { } at => at switch
            {
                >= 59 - Tolerance => HardScald,
                >= 54 - Tolerance => MiddleScald,
                _ => SoftScald,
            },
            _ when station.Is(KnownProcess.Pasteurising) && celsius is { } hot => hot >= 72 - Tolerance ? ShortHeat : LongHeat,
            _ => null,
        };
    }
}
