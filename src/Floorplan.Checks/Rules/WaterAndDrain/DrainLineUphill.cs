using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Language.Diagnostics;
using Floorplan.Language.Quantities;
using Floorplan.Sizing.Drainage.Lines;

namespace Floorplan.Checks.Rules.WaterAndDrain;

/// <summary>A drain line between two drains whose outlets the plan says: water runs down, and with the fall that the code asks.</summary>
internal sealed class DrainLineUphill : Rule
{
    /// <summary>In mm.</summary>
    private const double Rounding = 0.01;

    public override string Name => "drain-line-uphill";

    public override RuleGroup Group => RuleGroup.WaterAndDrain;

    public override string Says => "The line from one drain to the next runs uphill, or falls too little.";

    public override string Why => "Water runs down. In a line that is flat or rises, it stands, scraps settle and the line blocks.";

    public override string Mend
        => "Bring the outlet of the next drain lower, raise the first one, or lead the first out by a way of its own.";

    public override IReadOnlyList<Source> Sources { get; } =
    [
        new("water runs down", Origin.OwnAssumption, Force.Measured),
        DrainLine.UsSlopeSource,
        DrainLine.MetricSlopeSource,
    ];

    public override string Bad => WetBox.With(
        "Line uphill", """
        water w1 cold hot in rinse, north wall, 1200 from west, height 1200
        drain fd1 floor in rinse, 1500 from west, centred, 100, outlet 200 below floor, runs to fd2
        drain fd2 floor in rinse, 4 m from west, centred, 100, outlet 150 below floor
        """);

    public override IReadOnlyList<LineChange> Mended =>
        [new("drain fd2", "drain fd2 floor in rinse, 4 m from west, centred, 100, outlet 300 below floor")];

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        foreach (var line in context.Facts.DrainLines.Lines)
        {
            if (line is { Drain.OutletBelow: { } from, Next: { OutletBelow: { } to } next })
            {
                double has = (to - from).Millimetres;
                if (has < line.Fall.Value - Rounding)
                {
                    yield return Found(context, line, next.Id, has);
                }
            }
        }
    }

    private Finding Found(CheckContext context, DrainLine line, string next, double has)
    {
        var code = context.Plan.Head.Code;
        bool rises = has < -Rounding;
        var source = rises ? Sources[0] : DrainLine.SlopeSourceOf(code);
        string how = rises ? $"rises {context.Text(-has)}" : has < Rounding ? "has no fall" : $"falls {context.Text(has)}";
        double deepest = line.Drain.OutletBelow!.Value.Millimetres + Math.Ceiling(line.Fall.Value);
        return CheckContext.Find(
            this, rises ? Severity.Error : Severity.Warning, [line.Drain.Id, next],
            $"the line from {line.Drain.Id} to {next} {how} over {line.Run.Text}; it needs {line.Fall.Text} "
                + $"({QuantityText.Of(DrainLine.SlopeOf(code), Measure.Ratio, context.Plan.Units)})",
            $"write `outlet {context.Text(deepest)} below floor` at {next}, or raise the outlet of {line.Drain.Id}", line.Drain.Span,
            line.Drain.At.Coordinate) with
        {
            Limit = source.Text,
            Measured = has,
            LimitValue = line.Fall.Value,
            Figures = [line.Fall, line.Run],
        };
    }
}
