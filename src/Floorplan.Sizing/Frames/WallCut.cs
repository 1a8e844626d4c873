using Floorplan.Language.Quantities;
using Floorplan.Model.Shapes;
using Floorplan.Model.Shells;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Frames;

/// <summary>
/// How much of one corrugated wall's length its holes take, as they are cut with their frames; what lies above another counts once.
/// </summary>
/// <param name="Cuts">From the west or south end.</param>
/// <param name="Length">Cut away, in mm.</param>
/// <param name="Share">Of the wall's length; 1 is the whole.</param>
public sealed record WallCut(ShellWall Wall, IReadOnlyList<CutOut> Cuts, Figure Length, Figure Share)
{
    private static readonly Source Geometry = new("geometry of the holes that are cut: clear opening and frame", Origin.CommonPractice);

    /// <summary>Walls of a container that have holes; the end with the cargo doors has no such wall.</summary>
    internal static IReadOnlyList<WallCut> Of(PlanFacts facts)
    {
        var shell = facts.Plan.Shell;
        return shell.Kind != ShellKind.Container ? []
            : [.. facts.CutOuts.Where(c => c.Wall.Side != shell.DoorEnd).GroupBy(c => c.Wall).Select(
                g => Of(g.Key, [.. g.OrderBy(c => c.Along)], facts.Plan.Units))];
    }

    private static WallCut Of(ShellWall wall, IReadOnlyList<CutOut> cuts, UnitSystem units)
    {
        var stretches = new List<(Language.Quantities.Length From, Language.Quantities.Length To)>();
        foreach (var cut in cuts)
        {
            if (stretches.Count > 0 && cut.Along <= stretches[^1].To)
            {
                stretches[^1] = (stretches[^1].From, Language.Quantities.Length.Max(stretches[^1].To, cut.Right));
            }
            else
            {
                stretches.Add((cut.Along, cut.Right));
            }
        }

        string name = $"the {wall.Side.Word()} wall";
        var away = stretches.Aggregate(Language.Quantities.Length.Zero, (sum, s) => sum + (s.To - s.From));
        var length = new Figure
        {
            Name = $"length cut out of {name}",
            Of = Figure.WholePlan,
            Value = away.Millimetres,
            Kind = QuantityKind.Length,
            Text = QuantityText.Length(away, units),
            Inputs = [.. cuts.Select(c => FigureInput.Said(
                $"hole of {c.Opening.Id}", $"{QuantityText.Length(c.Width, units)} at {QuantityText.Length(c.Along, units)}",
                c.Opening.Span))],
            Formula = "sum of the stretches that holes take",
            Substituted = WorkingText.Sum([.. stretches.Select(s => QuantityText.Length(s.To - s.From, units))]),
            Source = Geometry,
        };
        double part = away.Millimetres / wall.Run.Millimetres;
        var share = new Figure
        {
            Name = $"share cut out of {name}",
            Of = Figure.WholePlan,
            Value = part,
            Kind = QuantityKind.Ratio,
            Text = QuantityText.Of(part, Measure.Ratio, units),
            Inputs = [
                FigureInput.Of(length),
                FigureInput.Said("length of the wall", QuantityText.Length(wall.Run, units), cuts[0].Opening.Span)],
            Formula = "length cut out / length of the wall",
            Substituted = $"{length.Text} / {QuantityText.Length(wall.Run, units)}",
            Source = Geometry,
        };
        return new WallCut(wall, cuts, length, share);
    }
}
