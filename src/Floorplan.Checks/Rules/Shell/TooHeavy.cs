using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Checks.Limits;
using Floorplan.Language.Diagnostics;
using Floorplan.Model;
using Floorplan.Model.Shells;
using Floorplan.Sizing.Weights;

namespace Floorplan.Checks.Rules.Shell;

/// <summary>
/// The box and all that stands in it, full and empty, against the plate; for a container against the usual plate where the plan gives
/// none.
/// </summary>
internal sealed class TooHeavy : Rule
{
    private const string Plate = "what a container may weigh in all";
    private const string SmallPlate = "what a container of 10 ft may weigh in all";

    public override string Name => "too-heavy";

    public override RuleGroup Group => RuleGroup.Shell;

    public override string Says => "A trailer or container with all that stands in it weighs more than its plate allows.";

    public override string Why
        => "Over its plate a trailer's brakes, tyres and hitch fail on the road, and a box breaks at its corners when it is lifted.";

    public override string Mend
        => "Empty tanks before it travels or is lifted, take lighter things, or a trailer or box with a higher plate. Write what the "
            + "plate says as `weight … rated` on the shell.";

    public override string? Caution
        => "Lifting and towing can kill: go by the plate of the real box or trailer, weigh it before it moves, and use licensed lifting "
            + "crews.";

    public override IReadOnlyList<Source> Sources { get; } =
    [
        RatedWeight.Usual,
        RatedWeight.UsualSmall,
        BareShell.Trade,
        new("49 CFR 567 and 571.3, US CFR: all together at most the gross weight on the plate", Origin.FromMemory, Force.Law),
        ShellLayers.Usual,
    ];

    public override IReadOnlyList<RuleLimit> Limits =>
    [
        new(Plate, RatedWeight.Box, LimitUnit.Kilograms, Sources[0], Severity.Warning),
        new(SmallPlate, RatedWeight.SmallBox, LimitUnit.Kilograms, Sources[1], Severity.Warning),
    ];

    public override string Bad => """
        plan "Towed fish van"
          units metric
        shell trailer 5 m x 2.2 m x 2.4 m
          hitch  west, 1200 ahead
          axles  2, 4250 from hitch
          weight 1200 kg empty, 2700 kg rated
        room cut "Cutting" clean from west to east
        door d1 cut to outside, south wall, 400 from west, 900 x 2000, swings out, closes itself, opens from inside
        drain fd1 floor in cut, 1000 from west, centred, 100
        station tank "Live tank" in cut
          size   1500 x 1000 x 1000
          place  against north wall, 1500 from west
          weight 120 kg empty, 1500 kg full
        station bench "Steel bench" in cut
          size   1500 x 600 x 900
          place  against east wall, 100 from north
          weight 90 kg
        """;

    public override IReadOnlyList<LineChange> Mended => [new("weight 120 kg", "  weight 120 kg empty, 800 kg full")];

    public override bool AppliesTo(Plan plan) => plan.Shell.Kind != ShellKind.Shed;

    /// <summary>The ratings are those of containers; one that the plan says holds before them.</summary>
    public override bool Uses(Plan plan, string key) => plan.Limits.Any(l => l.Rule == Name)
        || (plan.Shell.Kind == ShellKind.Container && plan.Shell.Loads.RatedKg is null);

    public override string MainKey(Plan plan) => plan.Limits.Any(l => l.Rule == Name) ? Plate : Key(plan);

    /// <summary>The plate of the real unit.</summary>
    public override Source SourceFor(Plan plan) => Sources[3];

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        var things = context.Facts.Items.Weighed.Select(w => w.Station).ToList();
        var weight = context.Facts.Weight;
        if (things.Count == 0 || !weight.IsWhole || Allowed(context) is not { } allowed)
        {
            yield break;
        }

        double full = weight.Full.Value;
        if (full <= allowed.Kg + 1e-6)
        {
            yield break;
        }

        bool always = weight.Empty.Value > allowed.Kg + 1e-6;
        string over = context.Weight(Math.Ceiling(full - allowed.Kg));
        yield return CheckContext.Find(
            this, always ? Severity.Warning : Severity.Note, [.. things.Select(s => s.Id)],
            $"the unit weighs {weight.Full.Text} with everything full{(always ? $" and {weight.Empty.Text} empty" : "")} "
                + $"({CountedWeight.Of(context.Facts)})",
            always ? $"take off {over}, beginning with {Named.Of(things[0])}" : $"empty {Named.Of(things[0])} and other full things "
                + $"before it moves, {over} at least",
            things[0].Span, things[0].Footprint.Centroid.Coordinate)
            with
        {
            Limit = allowed.Text,
            Measured = full,
            LimitValue = allowed.Kg,
            Figures = [weight.Full, .. always ? [weight.Empty] : Array.Empty<Figure>(), .. CountedWeight.Figures(context.Facts)]
        };
    }

    private static string Key(Plan plan) => RatedWeight.IsSmall(plan.Shell) ? SmallPlate : Plate;

    private (double Kg, string Text)? Allowed(CheckContext context)
    {
        var shell = context.Plan.Shell;
        var applied = context.Limit(this) is { SetBy: not null } set ? set
            : shell.Kind != ShellKind.Container ? null
            : context.Limit(this, Key(context.Plan));
        return shell.Loads.RatedKg is { } rated && applied?.SetBy is null
            ? (rated, $"rated {context.Weight(rated)} in this plan ({Sources[3].Text})")
            : applied is null ? null
            : (applied.Value, applied.Text);
    }
}
