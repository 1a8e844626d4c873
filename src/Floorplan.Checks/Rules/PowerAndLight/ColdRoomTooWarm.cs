using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Checks.Limits;
using Floorplan.Checks.Measuring;
using Floorplan.Language.Diagnostics;
using Floorplan.Model;
using Floorplan.Model.Rooms;

namespace Floorplan.Checks.Rules.PowerAndLight;

/// <summary>The temperature that a cold room keeps, against what the plan makes. Rooms where people work are left out.</summary>
internal sealed class ColdRoomTooWarm : Rule
{
    private const string Poultry = "warmest for poultry and small game";
    private const string Meat = "warmest for meat";
    private const string Fish = "warmest for fresh fish";
    private const string Milk = "warmest for milk";

    /// <summary>A tenth of a degree is a rounding of the plan's.</summary>
    private const double Tolerance = 0.1;

    public override string Name => "cold-room-too-warm";

    public override RuleGroup Group => RuleGroup.PowerAndLight;

    public override string Says
        => "A cold room in which nobody works keeps a temperature that is too warm for the meat, poultry, fish or milk of the "
            + "plan. Cheese, "
            + "vegetables, bread and what the plan's product does not tell are not looked at.";

    public override string Why
        => "A few degrees halve the days that meat and fish keep, and above 5 to 8 °C (41 to 46 °F) what makes people ill grows.";

    public override string Mend => "Write a lower `keep`, and take a cooling unit that holds it on the warmest day with the "
        + "product that comes in.";

    public override IReadOnlyList<Source> Sources { get; } =
    [
        new("Regulation (EC) 853/2004, Annex III, s.II, and Tier-LMHV, Germany: 4 °C", Origin.FoundInPublicCopy, Force.Law),
        new("Regulation (EC) 853/2004, Annex III, s.I ch.VII, and Tier-LMHV, Germany: 7 °C", Origin.FoundInSecondaryCopy, Force.Law),
        new(
            "Regulation (EC) 853/2004, Annex III, s.VIII ch.III: near melting ice, taken as 2 °C", Origin.FoundInSecondaryCopy,
            Force.Law),
        new("Regulation (EC) 853/2004, Annex III, s.IX ch.I: 8 °C when fetched each day", Origin.FromMemory, Force.Law),
        new("FSIS guidance and common practice: poultry at 40 °F (4.4 °C)", Origin.CommonPractice),
        new("meat hangs at 7 °C (45 °F) or colder; common practice", Origin.CommonPractice),
        new("fresh fish near melting ice, at most 38 °F (3.3 °C); common practice", Origin.CommonPractice),
        new("Pasteurized Milk Ordinance, items 17p and 18r: 45 °F (7.2 °C)", Origin.FromMemory, Force.ModelCode),
    ];

    public override IReadOnlyList<RuleLimit> Limits =>
    [
        new(Poultry, 4, LimitUnit.Celsius, Sources[0], Severity.Warning, CodeChoice.Eu),
        new(Poultry, 4.4, LimitUnit.Celsius, Sources[4], Severity.Warning, CodeChoice.Us, CodeChoice.None),
        new(Meat, 7, LimitUnit.Celsius, Sources[1], Severity.Warning, CodeChoice.Eu),
        new(Meat, 7, LimitUnit.Celsius, Sources[5], Severity.Warning, CodeChoice.Us, CodeChoice.None),
        new(Fish, 2, LimitUnit.Celsius, Sources[2], Severity.Warning, CodeChoice.Eu),
        new(Fish, 3.3, LimitUnit.Celsius, Sources[6], Severity.Warning, CodeChoice.Us, CodeChoice.None),
        new(Milk, 8, LimitUnit.Celsius, Sources[3], Severity.Warning, CodeChoice.Eu),
        new(Milk, 7.2, LimitUnit.Celsius, Sources[7], Severity.Warning, CodeChoice.Us, CodeChoice.None),
    ];

    public override string Bad => """
        plan "Moss side ducks"
          units metric
          product ducks, 2 kg each
        shell shed 6000 x 4000 x 2600
          lining walls 80 "PIR panel", ceiling 80 "PIR panel"
        room store "Store" cold from west to east
          keep 9 C
          cooling 30 kW
        door d1 store to outside, south wall, 300 from west, 1000 x 2050, swings out, closes itself, opens from inside
        """;

    public override IReadOnlyList<LineChange> Mended => [new("keep 9", "  keep 3 C")];

    public override bool AppliesTo(Plan plan) => KeyOf(plan) is not null && plan.Rooms.Any(r => r.Class == HygieneClass.Cold);

    public override string MainKey(Plan plan) => KeyOf(plan) ?? Poultry;

    public override bool Uses(Plan plan, string key) => key == KeyOf(plan);

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        // A figure of the plan's own holds for whatever it makes.
        if (KeyOf(context.Plan) is not { } key
            || (context.Limit(this) is { SetBy: not null } set ? set : context.Limit(this, key)) is not { } limit)
        {
            yield break;
        }

        var worked = context.Plan.Stations.Where(s => s.Workers.Count > 0).Select(s => s.Room.Id).ToHashSet(StringComparer.Ordinal);
        foreach (var room in context.Plan.Rooms.Where(r => r.Class == HygieneClass.Cold && !worked.Contains(r.Id)))
        {
            if (room.KeepCelsius is { } keeps && keeps > limit.Value + Tolerance)
            {
                yield return CheckContext.Find(
                    this, limit, keeps, [room.Id],
                    $"{Named.Of(room)} keeps {context.Temperature(keeps)}, too warm for {key["warmest for ".Length..]}",
                    $"write `keep` with {context.Temperature(limit.Value)} or less, and size its cooling for that", room.Span,
                    room.Floor.InteriorPoint.Coordinate);
            }
        }
    }

    private static string? KeyOf(Plan plan) => ProductWords.IsFish(plan) ? Fish
        : ProductWords.IsPoultry(plan) ? Poultry
        : ProductWords.IsMeat(plan) ? Meat
        : ProductWords.IsMilk(plan) ? Milk
        : null;
}
