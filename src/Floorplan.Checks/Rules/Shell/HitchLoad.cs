using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Checks.Limits;
using Floorplan.Language.Diagnostics;
using Floorplan.Model;
using Floorplan.Model.Shells;
using Floorplan.Sizing.Trailers;
using Floorplan.Sizing.Weights;

namespace Floorplan.Checks.Rules.Shell;

/// <summary>
/// The share of a trailer's weight on its hitch, with everything full and with everything empty, and against the plate of the coupling; the
/// worse is told.
/// </summary>
internal sealed class HitchLoad : Rule
{
    private const string Least = "least share of the weight on the hitch";
    private const string Most = "most of the weight on the hitch";
    private const double Middle = 12.5;

    /// <summary>A little over the least, for couplings there are plated low; own choice.</summary>
    private const double MiddleOfEurope = 6;

    /// <summary>3.5 t, in kg.</summary>
    private const double CarTrailer = 3500;

    public override string Name => "hitch-load";

    public override RuleGroup Group => RuleGroup.Shell;

    public override string Says => "The hitch of a trailer carries too little or too much of its weight.";

    public override string Why
        => "With too little weight on the hitch a trailer begins to sway at speed and takes the towing vehicle with it; with too much it "
            + "lifts the front wheels off their steering.";

    public override string Mend
        => "Move heavy things along the trailer, or set the axles elsewhere. A gooseneck carries 20 to 25 %: set that with `limit`.";

    public override string? Caution
        => "Towing can kill: weigh the finished trailer at the hitch and at the axles before it goes on the road, and keep to the plates "
            + "of trailer, hitch and vehicle.";

    public override IReadOnlyList<Source> Sources { get; } =
    [
        new Source("towing practice of the United States: 10 to 15 % on a ball hitch, 20 to 25 % on a gooseneck", Origin.FoundInPublicCopy)
            .In("us"),
        new("moments about the coupling, Trailer-Body Builders: tongue weight calculator", Origin.FoundInPublicCopy, Force.Measured),
        new("the bare trailer's weight lies in the middle of its box", Origin.OwnAssumption),
        ShellLayers.Usual,
        new Source(
            "Regulation (EU) 1230/2012, Annex I 2.7: at least 4 % of the trailer; the plates of coupling and vehicle say how much at most",
            Origin.FoundInSecondaryCopy, Force.Law).In("eu"),
        new("the plate of the coupling", Origin.CommonPractice),
        new Source("StVZO 44(3), Germany: at least 4 % of the trailer, and no more than 25 kg needed up to 3.5 t, 500 kg above; "
            + "above 3.5 t "
            + "15 % and 2 t at most", Origin.FoundInPublicCopy, Force.Law).In("de"),
        new("dealers in the United Kingdom: the plate of coupling and vehicle, usually 50 to 150 kg; no share is given",
            Origin.FoundInSecondaryCopy),
        new("some weight on the hitch steadies a trailer: 4 %; common practice", Origin.CommonPractice),
    ];

    public override IReadOnlyList<RuleLimit> Limits =>
    [
        new(Least, 10, LimitUnit.Percent, Sources[0], Severity.Warning),
        new(Most, 15, LimitUnit.Percent, Sources[0], Severity.Warning),
        new(Least, 4, LimitUnit.Percent, Sources[4], Severity.Warning),
        new(Least, 4, LimitUnit.Percent, Sources[6], Severity.Warning),
        new(Most, 15, LimitUnit.Percent, Sources[6], Severity.Warning),
        new(Least, 4, LimitUnit.Percent, Sources[8], Severity.Warning),
    ];

    public override string Bad => """
        plan "Towed fish van"
          units metric
          code us
        shell trailer 5 m x 2.2 m x 2.6 m
          hitch  west, 1200 ahead
          axles  2, 4100 from hitch
          weight 1200 kg empty, 2700 kg rated
        room cut "Cutting" clean from west to east
        door d1 cut to outside, south wall, 300 from west, 900 x 2000, swings out, closes itself, opens from inside
        drain fd1 floor in cut, 2500 from west, centred, 100
        station tank "Ice tank" in cut
          size   1000 x 800 x 1000
          place  against north wall, 3 m from west
          weight 400 kg
        """;

    public override IReadOnlyList<LineChange> Mended => [new("place  against", "  place  against north wall, 1.5 m from west")];

    public override bool AppliesTo(Plan plan) => plan.Shell.Kind == ShellKind.Trailer;

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        var worst = context.Facts.TrailerLoads
            .Select(load => (Load: load, Percent: 100 * load.HitchShare.Value, Limit: Broken(context, load)))
            .Where(c => c.Limit is not null)
            .OrderByDescending(c => Math.Abs(c.Percent - c.Limit!.Value) + (c.Load.IsFull ? 1e-6 : 0))
            .FirstOrDefault();
        if (OverPlate(context) is { } over)
        {
            yield return over;
        }

        if (worst.Limit is not { } limit)
        {
            yield break;
        }

        var (load, things) = (worst.Load, context.Facts.Items.Weighed.Select(w => w.Station).ToList());
        bool less = worst.Percent < limit.Value;
        string carries = load.OnHitch.Value >= 0
            ? $"the hitch carries {load.OnHitch.Text} of {load.Total.Text}, {load.HitchShare.Text}"
            : $"the trailer lifts its hitch with {context.Weight(-load.OnHitch.Value)}";
        double target = limit.SetBy is not null ? limit.Value : context.Plan.Head.Code == CodeChoice.Us ? Middle : MiddleOfEurope;
        yield return CheckContext.Find(
            this, limit, worst.Percent, [.. things.Select(s => s.Id)],
            $"{carries}, with everything {(load.IsFull ? "full" : "empty")} ({CountedWeight.Of(context.Facts)})",
            $"move {Named.Of(things[0])} {(less ? "towards" : "away from")} the hitch, or set the axles "
                + $"{context.Text(load.AxlesFor(target))} from the coupling",
            things[0].Span, things[0].Footprint.Centroid.Coordinate)
            with
        { Figures = [load.OnHitch, load.Total, load.HitchShare, .. CountedWeight.Figures(context.Facts)] };
    }

    /// <summary>Null where the plate is not said, or holds.</summary>
    private Finding? OverPlate(CheckContext context)
    {
        if (context.Plan.Shell.Loads.HitchRatedKg is not { } rated
            || context.Facts.TrailerLoads.MaxBy(l => l.OnHitch.Value) is not { } load || load.OnHitch.Value <= rated + 1e-6)
        {
            return null;
        }

        var things = context.Facts.Items.Weighed.Select(w => w.Station).ToList();
        return things.Count == 0 ? null : CheckContext.Find(
            this, Severity.Warning, [.. things.Select(s => s.Id)],
            $"the hitch carries {load.OnHitch.Text} with everything {(load.IsFull ? "full" : "empty")} "
                + $"({CountedWeight.Of(context.Facts)})",
            $"move {Named.Of(things[0])} away from the hitch, or set the axles nearer to it", things[0].Span,
            things[0].Footprint.Centroid.Coordinate)
            with
        {
            Limit = $"rated {context.Weight(rated)} in this plan ({Sources[5].Text})",
            Measured = load.OnHitch.Value,
            LimitValue = rated,
            Figures = [load.OnHitch, .. CountedWeight.Figures(context.Facts)],
        };
    }

    private AppliedLimit? Broken(CheckContext context, TrailerLoad load)
    {
        double percent = 100 * load.HitchShare.Value;
        bool german = context.Limit(this, Least) is { SetBy: null } l && l.Published.Source == Sources[6];
        bool heavy = load.Total.Value > CarTrailer;
        var least = context.Limit(this, Least);
        bool enough = german && load.OnHitch.Value >= (heavy ? 500 : 25) - 1e-6;
        if (least is not null && !enough && percent < least.Value - 1e-6)
        {
            return least;
        }

        if (german && !heavy)
        {
            return null;
        }

        // A plan that sets its own least share has another kind of hitch.
        return least?.SetBy is null && context.Limit(this, Most) is { } most && percent > most.Value + 1e-6 ? most : null;
    }
}
