using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Checks.Measuring;
using Floorplan.Language.Diagnostics;
using Floorplan.Model;
using Floorplan.Model.Stations;

namespace Floorplan.Checks.Rules.Hygiene;

internal sealed class SterilizerMissing : Rule
{
    public override string Name => "sterilizer-missing";

    public override RuleGroup Group => RuleGroup.Hygiene;

    public override string Says
        => "Meat, poultry or game is cut with a knife (`work cutting`) in a room that has no sterilizer, and the plan does "
            + "not ask for one.";

    public override string Why
        => "A knife carries the bowels of one animal into the next. Water of 82 °C (180 °F) beside the bench stops that; a "
            + "rinse does not.";

    public override string Mend
        => "Add a `sink … sterilizer` beside the bench and write `needs sterilizer` there, or accept this with how knives are changed.";

    public override string? Caution
        => "Water of 82 °C (180 °F) scalds. A licensed plumber and electrician do the work; local codes prevail.";

    public override IReadOnlyList<Source> Sources { get; } =
    [
        new(
            "Reg (EC) 853/2004 Annex III s.I and s.II, ch.II and III: tools disinfected in water of 82 °C or more, or as well otherwise",
            Origin.FoundInPublicCopy, Force.Law),
        new("knives changed or dipped between animals; common practice", Origin.CommonPractice),
    ];

    public override string Bad => """
        plan "Hillside lambs"
          units metric
          product lambs, 18 kg each
        shell shed 6000 x 3000 x 2500
        room dress "Dressing" dirty from west to east
        door d1 dress to outside, south wall, 500 from west, 900 x 2050, swings out, closes itself
        drain fd1 floor in dress, 3000 from west, centred, 100
        sink s1 hand in dress, 400 x 350, against south wall, 2500 from west
        station bench "Dressing bench" in dress
          size 1200 x 600 x 900
          place against north wall, 1500 from west
          worker south
          work cutting
        """;

    public override IReadOnlyList<LineChange> Mended =>
    [
        LineChange.After(
            "sink s1", "sink z1 sterilizer in dress, 300 x 300, against north wall, 2800 from west", "  needs power 230 V 0.6 kW"),
    ];

    public override bool AppliesTo(Plan plan) => ProductWords.IsMeat(plan) || ProductWords.IsPoultry(plan);

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        var served = context.Plan.Stations.Where(s => s.IsSterilizer).Select(s => s.Room.Id).ToHashSet(StringComparer.Ordinal);
        var source = Sources[context.Plan.Head.Code == CodeChoice.Eu ? 0 : 1];
        foreach (var room in context.Plan.Stations
            .Where(s => s.WorkKind == WorkKind.Cutting && !served.Contains(s.Room.Id) && s.Needs.All(n => n.Kind != NeedKind.Sterilizer))
            .GroupBy(s => s.Room.Id))
        {
            var first = room.First();
            yield return CheckContext.Find(this, Severity.Warning, [.. room.Select(s => s.Id)],
                $"knives are used at {Named.List(room.Select(Named.Of))}, and {Named.Of(first.Room)} has no sterilizer",
                $"add a `sink … sterilizer in {first.Room.Id}` beside it, which heats its own water: `needs power`, and write "
                    + "`needs sterilizer` on the bench",
                first.Span, first.Bounds.Centre.Coordinate) with
            { Limit = $"a sterilizer ({source.Text})" };
        }
    }
}
