using Floorplan.Language.Syntax;
using Floorplan.Model;
using Floorplan.Model.Shells;
using Floorplan.Sizing.Weights;

namespace Floorplan.Sizing.Trailers;

/// <summary>
/// How a trailer's weight is shared between hitch and axles, in kg and mm: moments about the coupling. The bare trailer's
/// weight is taken to lie in the middle of the box (own assumption).
/// </summary>
/// <param name="ToAxles">From the coupling to the middle of the axles.</param>
/// <param name="ToWeight">From the coupling to the centre of all weight.</param>
public sealed record TrailerLoad(double Total, double ToAxles, double ToWeight)
{
    public double Hitch => Total - OnAxles;

    public double OnAxles => Total * ToWeight / ToAxles;

    public double HitchPercent => 100 * Hitch / Total;

    /// <summary>Where the axles would have to be for the hitch to carry this share.</summary>
    public double AxlesFor(double percent) => ToWeight / (1 - (percent / 100));

    /// <summary>Null where the plan does not say enough: the trailer's own weight, its axles, and a thing's weight.</summary>
    public static TrailerLoad? Of(Plan plan, bool full)
    {
        var shell = plan.Shell;
        var things = ThingWeights.Weighed(plan);
        if (shell.Kind != ShellKind.Trailer || things.Count == 0 || shell.Loads is not { EmptyKg: { } own, AxlesFromHitch: { } axles } loads)
        {
            return null;
        }

        var box = shell.Outside.EnvelopeInternal;
        double ahead = loads.HitchAhead.Millimetres;
        double coupling = shell.HitchEnd == Side.West ? box.MinX - ahead : box.MaxX + ahead;
        double total = own;
        double moment = own * (ahead + (box.Width / 2));
        foreach (var thing in things)
        {
            double kg = ThingWeights.Of(thing, full)!.Value;
            total += kg;
            moment += kg * Math.Abs(thing.Footprint.EnvelopeInternal.Centre.X - coupling);
        }

        return new TrailerLoad(total, axles.Millimetres, moment / total);
    }
}
