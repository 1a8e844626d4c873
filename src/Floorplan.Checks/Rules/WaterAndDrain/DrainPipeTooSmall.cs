using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Sizing.Drainage.Lines;

namespace Floorplan.Checks.Rules.WaterAndDrain;

/// <summary>The said size of a drain against what comes to its line.</summary>
internal sealed class DrainPipeTooSmall : Rule
{
    /// <summary>Bought sizes are round figures of an inch or a millimetre, mm.</summary>
    private const double Rounding = 1;

    public override string Name => "drain-pipe-too-small";

    public override RuleGroup Group => RuleGroup.WaterAndDrain;

    public override string Says => "More water comes to a drain than a pipe of its size takes.";

    public override string Why
        => "A line that runs full backs up through the lowest drain, and the floor of the clean room floods with waste.";

    public override string Mend
        => "Take a wider drain and pipe, lead some of the drains out by a line of their own, or let less run at a time.";

    public override IReadOnlyList<Source> Sources { get; } =
        [DrainPipe.InchSource, DrainPipe.MetricSource, DrainUnits.Source, DrainUnits.EnSource];

    public override string Bad => WetBox.With(
        "Narrow drain", """
        water w1 cold hot in rinse, north wall, 1200 from west, height 1200
        drain fd1 floor in rinse, 1500 from west, centred, 50
        """, needs: "cold 60 L/min, drain");

    public override IReadOnlyList<LineChange> Mended => [new("drain fd1", "drain fd1 floor in rinse, 1500 from west, centred, 100")];

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        foreach (var line in context.Facts.DrainLines.Lines)
        {
            if (line.Drain.Size is not { } size || (line.Needed is { } fits && size.Millimetres >= fits.Nominal - Rounding))
            {
                continue;
            }

            var source = DrainPipe.SourceOf(context.Plan.Head.Code);
            string comes = line.Units is { } units ? $"{units.Text}, {line.Flow.Text} at once" : line.Flow.Text;
            yield return CheckContext.Find(
                this, source.Heaviest, [line.Drain.Id],
                $"{comes} come to {line.Drain.Id}, more than a drain line of {context.Text(size)} takes",
                line.Needed is { } needed
                    ? $"take {needed.Name}, or lead part of it out by another line"
                    : "lead part of it out by another line", line.Drain.Span, line.Drain.At.Coordinate) with
            {
                Limit = source.Text,
                Measured = size.Millimetres,
                LimitValue = line.Needed?.Nominal,
                Figures = [.. new[] { line.Units, line.Flow }.OfType<Figure>()],
            };
        }
    }
}
