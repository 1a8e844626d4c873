using Floorplan.Language.Quantities;
using Floorplan.Model.Shells;
using Floorplan.Model.Stations;
using Floorplan.Sizing.Working;
using NetTopologySuite.Geometries;

namespace Floorplan.Sizing.Weights;

/// <summary>
/// What the most heavily loaded metre of a container's length carries, with everything full: things over their own length, or over a metre
/// where they are shorter, the partitions likewise, and the floor build-up everywhere. Linings and hung things load the shell, and people
/// come and go: they are not counted. Null where nothing with a weight stands on it.
/// </summary>
/// <param name="Load">In kg on a metre.</param>
/// <param name="Things">That stand there, the heaviest first.</param>
public sealed record FloorLoad(Figure Load, IReadOnlyList<Station> Things)
{
    private const double Metre = 1000;
    private static readonly Source Spread = new(
        "a thing shorter than a metre spreads its weight over a metre of floor", Origin.OwnAssumption);

    internal static FloorLoad? Of(PlanFacts facts)
    {
        var plan = facts.Plan;
        if (plan.Shell.Kind != ShellKind.Container || facts.Items.Full.Value <= 0)
        {
            return null;
        }

        var loads = facts.Items.Weighed.Where(w => w.Full.Value > 0 && !w.Station.Hung).Select(
            w => Standing.Of(w.Full, w.Full.Value, w.Station.Footprint.EnvelopeInternal, w.Station)).ToList();
        if (facts.Layers.FirstOrDefault(l => l.Name == ShellLayers.Partitions) is { } walls)
        {
            loads.AddRange(plan.Partitions.Select(
                p => Standing.Of(walls.Weight, walls.PerArea.Value * ShellLayers.AreaOf(p), p.Outline.EnvelopeInternal, null)));
        }

        var (most, at) = Heaviest(loads);
        List<Standing> there = [.. loads.Where(l => l.West <= at && l.East > at).OrderByDescending(l => l.PerMetre)];
        var floor = facts.Layers.FirstOrDefault(l => l.Name == ShellLayers.Floor);
        double everywhere = floor is null ? 0 : floor.Weight.Value * Metre / plan.Shell.Finished.EnvelopeInternal.Width;
        double load = most + everywhere;
        var figure = new Figure
        {
            Name = "weight on a metre of the floor's length",
            Of = Figure.WholePlan,
            Value = load,
            Kind = QuantityKind.Mass,
            Text = QuantityText.Of(load, Measure.Mass, plan.Units),
            Inputs = [
                .. there.Select(l => FigureInput.Of(l.From)).Distinct(),
                .. floor is null ? Array.Empty<FigureInput>() : [FigureInput.Of(floor.Weight)]],
            Formula = "sum of each weight / its length, a metre at least",
            Substituted = WorkingText.Sum(
            [
                .. there.Select(
                    l => $"{QuantityText.Of(l.Kilograms, Measure.Mass, plan.Units)} / {WorkingText.Long(l.East - l.West, plan.Units)}"),
                .. floor is null ? Array.Empty<string>() : [
                    $"{floor.Weight.Text} / {WorkingText.Long(plan.Shell.Finished.EnvelopeInternal.Width, plan.Units)}"],
            ]),
            Source = Spread,
        };
        return new FloorLoad(figure, [.. there.Select(l => l.Station).OfType<Station>()]);
    }

    /// <summary>Walks from west to east over where each load begins and ends.</summary>
    private static (double Kg, double At) Heaviest(IReadOnlyList<Standing> loads)
    {
        double now = 0, most = 0, at = 0;
        foreach (var end in loads.Select(l => (At: l.East, Starts: false, Kg: -l.PerMetre)).Concat(
            loads.Select(l => (At: l.West, Starts: true, Kg: l.PerMetre))).OrderBy(e => e.At).ThenBy(e => e.Starts))
        {
            now += end.Kg;
            if (now > most + 1e-6)
            {
                (most, at) = (now, end.At);
            }
        }

        return (most, at);
    }

    /// <summary>One weight and the stretch of the length that it stands on, in mm.</summary>
    private sealed record Standing(Figure From, double Kilograms, double West, double East, Station? Station)
    {
        public double PerMetre => Kilograms * Metre / (East - West);

        public static Standing Of(Figure from, double kilograms, Envelope box, Station? station)
        {
            double half = Math.Max(box.Width, Metre) / 2;
            return new Standing(from, kilograms, box.Centre.X - half, box.Centre.X + half, station);
        }
    }
}
