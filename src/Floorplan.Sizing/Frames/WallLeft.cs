using Floorplan.Language.Quantities;
using Floorplan.Model.Shapes;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Frames;

/// <summary>What the holes leave of one corrugated wall.</summary>
/// <param name="Length">All that is left together, in mm.</param>
/// <param name="Narrowest">Between two holes, or a hole and the end of the wall, in mm; less than zero where holes overlap.</param>
/// <param name="WorstLevel">Above the underside of the shell, in mm: there a level cut meets most hole.</param>
/// <param name="WorstShare">Of the wall's length, cut away at that level.</param>
internal sealed record WallLeft(Figure Length, Figure Narrowest, double WorstLevel, Figure WorstShare)
{
    private static readonly Source Geometry = new("geometry of the holes that are cut: clear opening and frame", Origin.CommonPractice);

    public static WallLeft Of(WallCut wall, Workings work)
    {
        string name = $"the {wall.Wall.Side.Word()} wall";
        double run = wall.Wall.Run.Millimetres;
        double left = run - wall.Length.Value;
        string runText = Size(run, work);
        var length = work.Of(
            $"length left of {name}", Figure.WholePlan, left, QuantityKind.Length, Size(left, work), "length of the wall - length cut out",
            $"{runText} - {wall.Length.Text}", Geometry, FigureInput.Of(wall.Length));
        var (between, from, to) = Gaps(wall, run).MinBy(g => g.Width);
        var narrowest = work.Of(
            $"narrowest piece left of {name}", Figure.WholePlan, between, QuantityKind.Length, Size(between, work),
            "least distance between holes, and from holes to the ends of the wall", $"{to} - {from}", Geometry,
            [.. wall.Cuts.Select(c => Said(c, work))]);
        var (level, cut) = Worst(wall.Cuts);
        var share = work.Of(
            $"share of {name} cut at the worst level", Figure.WholePlan, run > 0 ? cut / run : 0, Measure.Ratio,
            "length cut at that level / length of the wall", $"{Size(cut, work)} / {runText}, {Size(level, work)} up", Geometry,
            [.. wall.Cuts.Select(c => Said(c, work))]);
        return new WallLeft(length, narrowest, level, share);

        // Ends of the wall count as the edges of holes.
        IEnumerable<(double Width, string From, string To)> Gaps(WallCut of, double whole)
        {
            double end = 0;
            foreach (var hole in of.Cuts)
            {
                yield return (hole.Along.Millimetres - end, Size(end, work), Size(hole.Along.Millimetres, work));
                end = Math.Max(end, hole.Right.Millimetres);
            }

            yield return (whole - end, Size(end, work), Size(whole, work));
        }
    }

    /// <summary>The cut length changes only at lower edges of holes, so that one of them is the worst level.</summary>
    internal static (double Level, double Cut) Worst(IReadOnlyList<CutOut> cuts) =>
        cuts.Select(c => c.Bottom).Distinct()
            .Select(level => (level.Millimetres, Cut: Union(cuts.Where(c => c.Bottom <= level && c.Top > level))))
            .OrderByDescending(l => l.Cut).ThenBy(l => l.Millimetres).First();

    private static double Union(IEnumerable<CutOut> cuts)
    {
        double sum = 0, end = double.NegativeInfinity;
        foreach (var cut in cuts.OrderBy(c => c.Along))
        {
            sum += Math.Max(0, cut.Right.Millimetres - Math.Max(end, cut.Along.Millimetres));
            end = Math.Max(end, cut.Right.Millimetres);
        }

        return sum;
    }

    private static FigureInput Said(CutOut cut, Workings work) => FigureInput.Said(
        $"hole of {cut.Opening.Id}", $"{QuantityText.Length(cut.Width, work.Units)} at {QuantityText.Length(cut.Along, work.Units)}",
        cut.Opening.Span);

    private static string Size(double millimetres, Workings work)
        => QuantityText.Length(Language.Quantities.Length.FromMillimetres(millimetres), work.Units);
}
