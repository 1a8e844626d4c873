using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Language.Diagnostics;
using Floorplan.Model.Rooms;
using Floorplan.Model.Services;

namespace Floorplan.Checks.Rules.Hygiene;

/// <summary>Compares the rooms that air is blown into with those that it is drawn from.</summary>
internal sealed class AirRunsToClean : Rule
{
    public override string Name => "air-runs-to-clean";

    public override RuleGroup Group => RuleGroup.Hygiene;

    public override string Says
        => "Fans draw air from a dirtier room into a cleaner one: air is supplied to the dirtier room, or drawn only from the "
            + "cleaner one, which then pulls it through a hatch or door.";

    public override string Why
        => "Steam, feather dust and smell go where the air goes. It has to come in at the clean end and leave at the dirty end.";

    public override string Mend => "Supply air to the clean room and draw it from the dirty one.";

    public override IReadOnlyList<Source> Sources { get; } =
    [
        new(
            "Regulation (EC) 852/2004, Annex II, chapter I(5): mechanical airflow from a contaminated to a clean area is to be avoided",
            Origin.FoundInSecondaryCopy, Force.Law),
    ];

    public override string Bad => """
        plan "Quail unit"
          units metric
        shell shed 8000 x 3000 x 2500
        room kill "Killing" dirty from west to 4000
        room dress "Dressing" clean from 4000 to east
        partitions thickness 80
        door d1 kill to outside, south wall, 500 from west, 900 x 2050, swings out, closes itself
        door d2 dress to outside, south wall, 500 from east, 900 x 2050, swings out, closes itself
        hatch h1 kill to dress, 300 from south, 700 x 500, sill 950
        air supply kill, exhaust dress
        """;

    public override IReadOnlyList<LineChange> Mended => [new("air supply", "air supply dress, exhaust kill")];

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        var supplied = Rooms<AirSupply>(context);
        var drawn = Rooms<AirExhaust>(context);
        foreach (var finding in Pulled(context, supplied.ConvertAll(s => s.Room.Id), drawn))
        {
            yield return finding;
        }

        foreach (var (from, point) in supplied.Where(s => !drawn.Exists(d => d.Room == s.Room)))
        {
            // The dirtiest supplied room against the cleanest one that air leaves from: one fan in the wrong place is one mistake.
            if (drawn.Where(d => Rank(d.Room) < Rank(from)).OrderBy(d => Rank(d.Room)).Select(d => d.Room).FirstOrDefault() is { } to)
            {
                yield return CheckContext.Find(
                    this, Severity.Warning, [from.Id, to.Id],
                    $"air is blown into {Named.Of(from)}, {Word(from)}, and drawn out of {Named.Of(to)}, {Word(to)}, so that it runs "
                        + "from dirty to clean",
                    $"supply {Named.Of(to)} and draw from {Named.Of(from)}: air supply {to.Id}, exhaust {from.Id}", point.Span,
                    from.Floor.InteriorPoint.Coordinate);
            }
        }
    }

    /// <summary>A fan that only draws from a clean room takes its air from next door, through the hatch.</summary>
    private IEnumerable<Finding> Pulled(CheckContext context, List<string> supplied, List<(Room Room, AirExhaust Point)> drawn)
    {
        foreach (var (clean, point) in drawn.Where(d => Rank(d.Room) == 0 && !supplied.Contains(d.Room.Id)))
        {
            if (context.Plan.Openings.Select(o => o.RoomA?.Id == clean.Id ? o.RoomB : o.RoomB?.Id == clean.Id ? o.RoomA : null)
                .OfType<Room>()
                .FirstOrDefault(r => Rank(r) > 1 && !supplied.Contains(r.Id) && !drawn.Exists(d => d.Room.Id == r.Id)) is { } dirty)
            {
                yield return CheckContext.Find(
                    this, Severity.Warning, [dirty.Id, clean.Id],
                    $"air is drawn out of {Named.Of(clean)}, {Word(clean)}, and blown in nowhere there, so that it comes in from "
                        + $"{Named.Of(dirty)}, {Word(dirty)}",
                    $"supply {Named.Of(clean)} and draw from {Named.Of(dirty)}: air supply {clean.Id}, exhaust {dirty.Id}", point.Span,
                    clean.Floor.InteriorPoint.Coordinate);
            }
        }
    }

    private static List<(Room Room, T Point)> Rooms<T>(CheckContext context)
        where T : AirPoint =>
        [.. context.Plan.Services.OfType<T>().Where(s => s.Room is not null).Select(s => (s.Room!, s)).DistinctBy(p => p.Item1.Id)];

    /// <summary>Cleaner is less. Staff, dry and plant rooms lie between.</summary>
    private static int Rank(Room room) => room.Class switch
    {
        HygieneClass.Clean or HygieneClass.Cold => 0,
        HygieneClass.Dirty => 2,
        HygieneClass.Toilet => 3,
        _ => 1,
    };

    private static string Word(Room room) => room.Class.ToString().ToLowerInvariant();
}
