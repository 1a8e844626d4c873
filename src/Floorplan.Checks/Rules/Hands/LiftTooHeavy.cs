using System.Globalization;
using Floorplan.Checks.Framework;
using Floorplan.Checks.Lifting;
using Floorplan.Language.Diagnostics;
using Floorplan.Language.Quantities;
using Floorplan.Model.Flows;
using Floorplan.Model.Rooms;
using Floorplan.Model.Space;
using Floorplan.Model.Stations;

namespace Floorplan.Checks.Rules.Hands;

/// <summary>
/// The lift from each station and onto the next on product legs carried by hand, by the revised NIOSH equation at its most favourable:
/// load close to the body, no twist, a firm grip, one lift now and then. What is too heavy so is too heavy in any case. Of several
/// products the lightest counts, since a plan does not say which of them a leg carries.
/// </summary>
internal sealed class LiftTooHeavy : Rule
{
    /// <summary>At this index nearly all can lift safely; the design goal of the equation.</summary>
    private const double Goal = 1;

    public override string Name => "lift-too-heavy";

    public override RuleGroup Group => RuleGroup.Hands;

    public override string Says => "A piece of product carried by hand is too heavy to be lifted, even held close and lifted seldom.";

    public override string Why => "A back that lifts too much gives out after a season, not after a lift. Reaching out, twisting and lifting often make it worse than the figure says.";

    public override string Mend => "Use a rail, a hoist, a trolley of the bench's height or a conveyor, or make the pieces lighter. Bring both heights near to 30 in.";

    public override string? Caution => "The equation does not cover cold rooms, live animals, liquids, low headroom, one hand or a team of two; there somebody who knows has to look.";

    public override IReadOnlyList<Source> Sources { get; } =
    [
        new("Revised NIOSH lifting equation, DHHS (NIOSH) 94-110, 1994, rev. 2021: a lifting index of 1 is the design goal", Origin.FoundInPublicCopy),
    ];

    public override IReadOnlyList<RuleLimit> Limits => [new("lifting index", Goal, LimitUnit.Count, Sources[0], Severity.Warning)];

    public override string Bad => Unit("hams, 30 kg each");

    public override string Good => Unit("hams, 9 kg each");

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        if (context.Limit(this) is not { } limit || WeightLb(context) is not { } load)
        {
            yield break;
        }

        foreach (var way in context.Space.LegRoutes)
        {
            if (way.Flow.Stream == Model.Flows.Stream.Product && way.Leg is { Carriage.Kind: CarriageKind.Hand, From: StationStop { Station: var from }, To: StationStop { Station: var to } }
                && Index(load, from, to) is var index && index > limit.Value + 1e-9)
            {
                yield return Report(context, way, from, to, load, index, limit);
            }
        }
    }

    private static double? WeightLb(CheckContext context) =>
        context.Plan.Head.Products.Count > 0 && context.Plan.Head.Products.All(p => p.WeightEach is { Unit.Kind: QuantityKind.Mass })
            ? context.Plan.Head.Products.Min(p => p.WeightEach!.Value.Base) / InchPound.KilogramsPerPound
            : null;

    /// <summary>Cold rooms are outside the equation's 19 to 26 degrees Celsius.</summary>
    private static bool IsCovered(Station station) => station.Room.Class != HygieneClass.Cold;

    private static double Index(double load, Station from, Station to)
    {
        double origin = from.WorkHeight.Millimetres / InchPound.MillimetresPerInch, end = to.WorkHeight.Millimetres / InchPound.MillimetresPerInch;
        double At(double height) => LiftingEquation.Index(
            new Lift(load, 10, height, Math.Abs(end - origin), 0, 0.2, LiftingDuration.Short, Coupling.Good) { OriginIn = origin });
        return Math.Max(At(origin), At(end));
    }

    private Finding Report(CheckContext context, LegRoute way, Station from, Station to, double load, double index, AppliedLimit limit)
    {
        string weight = context.Plan.Units == UnitSystem.Metric
            ? (load * InchPound.KilogramsPerPound).ToString("0.#", CultureInfo.InvariantCulture) + " kg"
            : load.ToString("0.#", CultureInfo.InvariantCulture) + " lb";
        string figure = double.IsFinite(index) ? "a lifting index of at least " + index.ToString("0.0", CultureInfo.InvariantCulture) : "past what the equation allows at all";
        bool covered = IsCovered(from) && IsCovered(to);
        string cold = covered ? "" : " in a warm room; the equation does not cover cold ones";
        var finding = CheckContext.Find(
            this, limit, index, [from.Id, to.Id], $"{weight} are lifted by hand from {Named.Of(from)} to {Named.Of(to)}: {figure}{cold}",
            "write another carriage for this leg, such as: by rail, or by trolley 600 wide, or lift with two people and accept it",
            way.Leg.Span, from.Bounds.Centre.Coordinate);
        return covered ? finding : finding with { Severity = Severity.Note };
    }

    private static string Unit(string product) => $"""
        plan "Ham room"
          units metric
          product {product}
        shell shed 6000 x 3000 x 2600
        room salt "Salting" clean from west to east
        door d1 salt to outside, south wall, 300 from west, 1000 x 2050, swings out
        station bench "Salting bench" in salt
          size   1500 x 600 x 850
          place  against north wall, 500 from west
          worker south
        station rack "Turning table" in salt
          size   1500 x 600 x 850
          place  against north wall, 500 from east
          worker south
        flow product
          outside -> d1 -> bench -> rack by hand
        """;
}
