using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Language.Diagnostics;
using Floorplan.Model;
using Floorplan.Model.Rooms;

namespace Floorplan.Checks.Rules.Hygiene;

internal sealed class FinishMissing : Rule
{
    private static readonly string[] Surfaces = ["floor", "walls", "ceiling"];

    public override string Name => "finish-missing";

    public override RuleGroup Group => RuleGroup.Hygiene;

    public override string Says
        => "A room that is washed down does not say what its floor, walls and ceiling are made of, or how floor and wall meet. "
        + "Where no room says anything of finishes, there is one note for the whole plan, once it counts a crew.";

    public override string Why
        => "Water finds every joint. A floor that is not coved rots the wall behind the panel, and no brush reaches a square corner.";

    public override string Mend => "Name them, such as: finish floor \"resin, coved\", walls \"panel\", ceiling \"panel\".";

    public override IReadOnlyList<Source> Sources { get; } =
    [
        new Source("9 CFR 416.2(b)(2), US CFR: durable, impervious, cleanable; no radius", Origin.FoundInSecondaryCopy, Force.Law)
            .In("us").Of(PlantOf.Inspected),
        new Source("Food Code 2022, 6-201.13: floors coved up the wall", Origin.FromMemory, Force.ModelCode).In("us").Of(PlantOf.Retail),
        new Source("California CURFFL 114150: floor coved up the wall, 3/8 in radius", Origin.FoundInSecondaryCopy, Force.Law)
            .In("us-ca").Of(PlantOf.Retail),
        new Source("Colorado, 8 CCR 1202-16 Part 2, 2024: slaughter rooms have a coved and drained floor", Origin.FoundInPublicCopy,
            Force.Law).In("us-co").For(Trade.Poultry),
        new Source("Iowa, guidelines for meat plants: floors coved, no radius", Origin.FoundInPublicCopy, Force.Guidance)
            .In("us-ia").For(Trade.RedMeat),
        new Source("Regulation (EC) 852/2004, Annex II, chapter II(1): impervious, washable surfaces; no radius", Origin.FromMemory,
            Force.Law).In("eu"),
        new Source("South Africa, Red Meat Regulations 2004 and Poultry Regulations 2006, reg 11: floor and wall meet with a radius "
            + "of 50 mm",
            Origin.FoundInPublicCopy, Force.Law).In("za").For(Trade.RedMeat, Trade.Poultry),
        new("floors coved where they are hosed down; common practice", Origin.CommonPractice),
    ];

    public override string Bad => """
        plan "Bream unit"
          units metric
        shell shed 6000 x 3000 x 2500
        room gut "Gutting" dirty from west to east
          finish floor "resin, coved"
        door d1 gut to outside, south wall, 500 from west, 900 x 2050, swings out, closes itself
        """;

    public override IReadOnlyList<LineChange> Mended =>
    [
        new("finish floor", "  finish floor \"resin, coved\", walls \"panel\", ceiling \"panel\""),
    ];

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        var washed = context.Plan.Rooms.Where(r => r.WashedDown).ToList();
        if (context.Plan.Rooms.Any(r => r.Finishes.Count > 0))
        {
            return washed.Select(r => (Room: r, Missing: Missing(r))).Where(r => r.Missing.Count > 0).Select(r => CheckContext.Find(
                this, Severity.Note, [r.Room.Id],
                $"{Named.Of(r.Room)} is washed down, and the plan does not say the finish of its {Named.List(r.Missing)}",
                "name it under the room, such as: finish floor \"resin, coved\", walls \"panel\", ceiling \"panel\"", r.Room.Span,
                r.Room.Floor.InteriorPoint.Coordinate));
        }

        return washed.Count == 0 || context.Facts.Crew.All.Value == 0 ? [] :
        [
            CheckContext.Find(this, Severity.Note, [.. washed.Select(r => r.Id)],
                $"no finish is named of {Named.List(washed.Select(Named.Of))}, which {(washed.Count == 1 ? "is" : "are")} washed down",
                "name them under each room, such as: finish floor \"resin, coved\", walls \"panel\", ceiling \"panel\"", washed[0].Span,
                washed[0].Floor.InteriorPoint.Coordinate),
        ];
    }

    private static List<string> Missing(Room room)
    {
        var missing = Surfaces.Where(s => !room.Finishes.ContainsKey(s)).ToList();

        // Base, coving and curb are one: any of them says how floor and wall meet.
        if (room.Finishes.TryGetValue("floor", out string? floor) && !room.Finishes.ContainsKey("base") && !FinishWords.IsCoved(floor))
        {
            missing.Add("base, where floor and wall meet");
        }

        return missing;
    }
}
