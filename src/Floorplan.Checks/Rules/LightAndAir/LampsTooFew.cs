using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Checks.Rules.PowerAndLight;
using Floorplan.Language.Diagnostics;
using Floorplan.Language.Quantities;
using Floorplan.Model;

namespace Floorplan.Checks.Rules.LightAndAir;

/// <summary>The lamps that a room says against the light that the plan promises there.</summary>
internal sealed class LampsTooFew : Rule
{
    /// <summary>The lumen method is no nearer than this share; own choice.</summary>
    private const double Tolerance = 0.05;

    public override string Name => "lamps-too-few";

    public override RuleGroup Group => RuleGroup.PowerAndLight;

    public override string Says => "The lamps of a room give less light than the plan says for it.";

    public override string Why
        => "The level on the drawing is a promise; the lamps that are bought decide what the inspector's meter shows.";

    public override string Mend => "Put up more lamps or brighter ones, or say the level that they give.";

    public override string? Caution => ElectricWork.Caution;

    public override IReadOnlyList<Source> Sources { get; } =
    [
        new("lumen method, CIBSE; table of one open batten, 70/50/20 surfaces, 0.7 for age and dirt", Origin.FoundInPublicCopy),
    ];

    public override string Bad => """
        plan "Two lamps"
          units metric
        shell shed 5000 x 3000 x 2600
        room cut "Cutting" clean from west to east
          light 540 lux
          lamps 2 x 4000 lm 40 W
        door d1 cut to outside, south wall, 300 from west, 1000 x 2050, swings out, closes itself
        drain fd1 floor in cut, 2500 from west, centred, 100
        sink s1 hand in cut, 400 x 350, against east wall, 1200 from south
        station bench "Trim bench" in cut
          size   1800 x 600 x 900
          place  against north wall, centred
          worker south
        """;

    public override IReadOnlyList<LineChange> Mended => [new("lamps 2", "  lamps 6 x 4000 lm 40 W")];

    public override bool AppliesTo(Plan plan) => plan.Rooms.Any(r => r.Lamps is not null);

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        foreach (var lamps in context.Facts.Lamps.Values)
        {
            if (!lamps.IsSaid || lamps.Asked is not { } asked || lamps.Reached.Value >= asked.Value * (1 - Tolerance))
            {
                continue;
            }

            double needed = Math.Ceiling(lamps.Count.Value * asked.Value / lamps.Reached.Value);
            yield return CheckContext.Find(
                this, Severity.Warning, [lamps.Room.Id],
                $"{lamps.Count.Text} in {Named.Of(lamps.Room)} give about {lamps.Reached.Text} of the {asked.Text} that the plan says",
                $"hang {QuantityText.Count(needed, "lamp")} of this kind or brighter ones, or say the level that they give",
                    lamps.Room.Span,
                lamps.Room.Floor.InteriorPoint.Coordinate) with
            {
                Measured = lamps.Reached.Value,
                LimitValue = asked.Value,
                Figures = [lamps.Reached, lamps.Count],
            };
        }
    }
}
