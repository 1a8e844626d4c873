using Floorplan.Language.Quantities;
using Floorplan.Sizing.Power.Formulas;
using Floorplan.Sizing.Power.Loads;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Power.Sizes;

/// <summary>A generator that carries the unit, and how deep its voltage dips when the largest motor starts.</summary>
/// <param name="Size">In VA; null above the largest that is listed.</param>
/// <param name="Motor">The motor that draws most when it starts; null where none is said in horsepower.</param>
/// <param name="Start">VA of its start; null without a motor.</param>
/// <param name="Dip">As a share; null without a motor.</param>
public sealed record GeneratorSize(Figure? Size, PowerLoad? Motor, Figure? Start, Figure? Dip)
{
    /// <summary>A generator is loaded to 60 to 80 %.</summary>
    private const double Loaded = 0.8;

    private static readonly Source LoadSource = new("generator loaded to 60 to 80 %, nationalpump.com.au", Origin.FoundInPublicCopy);
    private static readonly Source SizesSource = new("usual sizes of generators", Origin.OwnAssumption);

    /// <summary>In kVA.</summary>
    private static readonly double[] Sizes =
        [3, 5, 7.5, 10, 12.5, 15, 20, 25, 30, 40, 50, 60, 80, 100, 125, 150, 200, 250, 300, 400, 500];

    internal static GeneratorSize Of(IReadOnlyList<PowerLoad> loads, Figure demand, Workings workings)
    {
        var motor = loads.Where(l => l.Kind == PowerLoadKind.Motor && l.Draws.Value > 0).MaxBy(l => l.Draws.Value);
        var start = motor is null ? null : workings.Of(
            "start of the largest motor", motor.Id, motor.Draws.Value * MotorStart.DirectOn, Measure.ApparentPower,
            "6 x what it draws at full load", $"6 x {motor.Draws.Text}", MotorStart.StartSource, FigureInput.Of(motor.Draws));
        double byStart = start is null ? 0 : MotorStart.SmallestFor(start.Value);
        double needed = Math.Max(demand.Value / Loaded, byStart) / 1000;
        if (Sizes.Where(s => needed <= s).Select(s => (double?)s).FirstOrDefault() is not { } size)
        {
            return new GeneratorSize(null, motor, start, null);
        }

        var chosen = workings.Of(
            "generator", Figure.WholePlan, size * 1000, Measure.ApparentPower,
            "the larger of demand / 0.8 and the start of the largest motor x 0.35 (a dip of 30 %), next usual size up",
            $"{demand.Text} / 0.8 = {workings.Fine(demand.Value / Loaded, Measure.ApparentPower)}"
                + (start is null ? "" : $"; {start.Text} x 0.35 = {workings.Fine(byStart, Measure.ApparentPower)}"),
            LoadSource,
            [
                FigureInput.Of(demand), .. start is null ? [] : new[] { FigureInput.Of(start) },
                FigureInput.Taken("sizes", "3 kVA and up", SizesSource),
                FigureInput.Taken("deepest dip", "30 %", MotorStart.DipSource),
            ]);
        var dip = start is null ? null : workings.Of(
            "dip at the start", motor!.Id, MotorStart.Dip(start.Value, chosen.Value), Measure.Ratio,
            "z / (1 + z), z = start / generator x 0.15", $"z = {start.Text} / {chosen.Text} x 0.15", MotorStart.DipSource,
            FigureInput.Of(start), FigureInput.Of(chosen), FigureInput.Taken("transient reactance", "0.15", MotorStart.DipSource));
        return new GeneratorSize(chosen, motor, start, dip);
    }
}
