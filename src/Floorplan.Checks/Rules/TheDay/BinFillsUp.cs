using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Language.Diagnostics;
using Floorplan.Language.Quantities;
using Floorplan.Model;
using Floorplan.Sizing.Simulation.Line;

namespace Floorplan.Checks.Rules.TheDay;

internal sealed class BinFillsUp : Rule
{
    public override string Name => "bin-fills-up";

    public override RuleGroup Group => RuleGroup.TheDay;

    public override string Says => "More waste comes into a bin than it holds before it is emptied.";

    public override string Why => "Waste over the rim is on the floor, draws flies, and somebody carries it out through the clean work.";

    public override string Mend => "Take a larger bin or another one, or say in the flow of waste that it is emptied during work.";

    public override IReadOnlyList<Source> Sources { get; } =
    [
        DaySources.Sum,
        new("a litre of waste is taken as a kilogram", Origin.OwnAssumption),
    ];

    public override string Bad => DayExamples.Line(
        "  work 12 s each\n  waste 0.5 kg each to scrap", "  holds 5 shelves x 40 crates", crew: 1)
        .Replace("flow product", $"{SecondDoor}\n{Bin}\nflow product", StringComparison.Ordinal)
        .Replace("day\n", $"{Scraps}\nday\n", StringComparison.Ordinal);

    private const string SecondDoor =
        "door d2 pack to outside, south wall, 1000 from west, 900 x 2050, swings out, closes itself, opens from inside";

    private const string Bin = "bin scrap 60 L in pack, 400 x 400 x 600, against north wall, west of bench gap 50";

    private const string Scraps =
        "flow waste \"Scraps\"\n  bench -> scrap by chute\n  scrap -> d2 -> outside by trolley 500 wide, after work";

    public override IReadOnlyList<LineChange> Mended =>
        [new("bin scrap", "bin scrap 120 L in pack, 400 x 400 x 800, against north wall, west of bench gap 50")];

    public override bool AppliesTo(Plan plan) => plan.Day is { Targets.Count: > 0 };

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        foreach (var bin in context.Facts.Day.Paced?.Bins ?? [])
        {
            // One that is emptied during work is full now and then; that only costs time.
            if (bin.FullAt is not { } full || bin.Bin.Crew >= 0)
            {
                continue;
            }

            var station = context.Plan.Stations.First(s => s.Id == bin.Bin.Name);
            yield return CheckContext.Find(
                this, Severity.Warning, [station.Id],
                $"{station.Id} holds {context.Weight(bin.Bin.Kilograms)} and {context.Weight(bin.Kilograms)} of waste come in the day: "
                    + $"it is full {QuantityText.Time(Ticks.Seconds(full))} after the start",
                $"make it larger, or empty it during work: leave out `after work` where {station.Id} goes outside",
                station.Span, station.Footprint.Centroid.Coordinate) with
            {
                Measured = bin.Kilograms,
                LimitValue = bin.Bin.Kilograms,
            };
        }
    }
}
