using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Language.Diagnostics;
using Floorplan.Model;
using Floorplan.Model.Shells;
using Floorplan.Sizing.Weights;

namespace Floorplan.Checks.Rules.Shell;

/// <summary>The weight that a trailer's axles carry against their plates, full and empty.</summary>
internal sealed class AxleOverloaded : Rule
{
    public override string Name => "axle-overloaded";

    public override RuleGroup Group => RuleGroup.Shell;

    public override string Says => "The axles of a trailer carry more than their plates allow.";

    public override string Why
        => "Overloaded axles burst tyres and burn out bearings and brakes, on a trailer that looks the same as a sound one.";

    public override string Mend
        => "Empty tanks before it travels, move weight towards the hitch as far as the hitch bears it, or fit axles with a higher plate.";

    public override string? Caution => "Towing can kill: weigh the finished trailer at its axles before it goes on the road.";

    public override IReadOnlyList<Source> Sources { get; } =
    [
        new("49 CFR 567 and 571.3, US CFR: the load on an axle at most its rating", Origin.FromMemory, Force.Law),
        new("moments about the coupling, Trailer-Body Builders: tongue weight calculator", Origin.FoundInPublicCopy, Force.Measured),
        new("the bare trailer's weight lies in the middle of its box, and its axles share alike", Origin.OwnAssumption),
        ShellLayers.Usual,
    ];

    public override string Bad => """
        plan "Towed fish van"
          units metric
        shell trailer 5 m x 2.2 m x 2.4 m
          hitch  west, 1200 ahead
          axles  2, 4100 from hitch, 900 kg each
          weight 1200 kg empty, 3500 kg rated
        room cut "Cutting" clean from west to east
        door d1 cut to outside, south wall, 300 from west, 900 x 2000, swings out, closes itself, opens from inside
        drain fd1 floor in cut, 1000 from west, centred, 100
        station tank "Live tank" in cut
          size   1500 x 1000 x 1000
          place  against north wall, 1500 from west
          weight 1000 kg
        """;

    public override IReadOnlyList<LineChange> Mended => [new("axles  2,", "  axles  2, 4100 from hitch, 1350 kg each")];

    public override bool AppliesTo(Plan plan) => plan.Shell.Kind == ShellKind.Trailer;

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        var shell = context.Plan.Shell;
        if (shell is not { Axles: > 0 and var axles, Loads.AxleRatedKg: { } each }
            || context.Facts.TrailerLoads is not [var full, var empty])
        {
            yield break;
        }

        double allowed = axles * each;
        if (Math.Max(full.OnAxles.Value, empty.OnAxles.Value) <= allowed + 1e-6)
        {
            yield break;
        }

        var things = context.Facts.Items.Weighed.Select(w => w.Station).ToList();
        bool always = empty.OnAxles.Value > allowed + 1e-6;
        var worst = full.OnAxles.Value >= empty.OnAxles.Value ? full : empty;
        string over = context.Weight(Math.Ceiling(worst.OnAxles.Value - allowed));
        yield return CheckContext.Find(
            this, always ? Severity.Warning : Severity.Note, [.. things.Select(s => s.Id)],
            (axles == 1 ? "the axle carries" : FormattableString.Invariant($"the {axles} axles carry"))
            + $" {worst.OnAxles.Text} with everything {(worst.IsFull ? "full" : "empty")} ({CountedWeight.Of(context.Facts)})",
            always
                ? $"take {over} off the axles, beginning with {Named.Of(things[0])}"
                : $"empty {Named.Of(things[0])} and other full things before it moves",
            things[0].Span, things[0].Footprint.Centroid.Coordinate)
            with
        {
            Limit = $"{context.Weight(each)} for each axle in this plan ({Sources[0].Text})",
            Measured = worst.OnAxles.Value,
            LimitValue = allowed,
            Figures = [worst.OnAxles, .. CountedWeight.Figures(context.Facts)]
        };
    }
}
