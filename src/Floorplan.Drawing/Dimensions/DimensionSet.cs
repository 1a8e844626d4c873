using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Scene;
using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax;
using NetTopologySuite.Geometries;

namespace Floorplan.Drawing.Dimensions;

/// <summary>
/// The dimension rows round one view, from the plan outwards in the order added; overall rows always end up outermost. Rows that
/// would repeat another row of their side are left out.
/// </summary>
/// <param name="extent">The outline that rows stand off from, in plan mm.</param>
/// <param name="tape">How finely figures are printed.</param>
public sealed class DimensionSet(Envelope extent, Tape tape, DrawingStandard standard)
{
    /// <summary>How far upright rows move at a time to keep clear of a level row, paper mm, and how often; own choice.</summary>
    private const double Step = 1;
    private const int MostSteps = 60;

    private readonly List<DimensionRow> rows = [];

    /// <summary>A sheet measures its views at many scales, and draws them at one of these.</summary>
    private readonly Dictionary<(Side, double), List<LaidRow>> laidRows = [];

    public void Add(DimensionRow row)
    {
        if (row.Stops.Select(s => s.Along).Distinct().Count() > 1 && !rows.Exists(r => r.Side == row.Side && SameStretches(r, row)))
        {
            rows.Add(row);
            laidRows.Clear();
        }
    }

    /// <summary>
    /// Paper taken outside the extent on a side, in mm, at a scale: by its rows, and by texts of other rows that reach past a corner.
    /// </summary>
    public double Depth(Side side, double denominator)
    {
        var laid = Lay(side, denominator);
        var flat = Flat(denominator);
        var box = flat.ToPaper(extent);
        var around = Enum.GetValues<Side>().Where(s => s != side).SelectMany(s => Boxes(s, Lay(s, denominator), flat))
            .Aggregate(box, (all, text) => all.With(text));
        double past = side switch
        {
            Side.North => box.Top - around.Top,
            Side.South => around.Bottom - box.Bottom,
            Side.East => around.Right - box.Right,
            _ => box.Left - around.Left,
        };
        return laid.Select(r => r.Outer).Append(past).Max();
    }

    /// <summary>Draws all rows; the text is fixed in the scene, so labels keep clear of it.</summary>
    public void Draw(SceneBuilder scene, PlanTransform transform)
    {
        foreach (var side in Enum.GetValues<Side>())
        {
            new RowPen(scene, transform, extent, side, standard).Draw(Lay(side, transform.Denominator));
        }
    }

    private List<LaidRow> Lay(Side side, double denominator) => laidRows.TryGetValue((side, denominator), out var known)
        ? known
        : laidRows[(side, denominator)] = LayNow(side, denominator);

    /// <summary>Upright rows stand off further where their texts would meet those of a level row at a corner.</summary>
    private List<LaidRow> LayNow(Side side, double denominator)
    {
        var laid = LayFrom(standard.FirstRow, side, denominator);
        if (side is Side.North or Side.South || laid.Count == 0)
        {
            return laid;
        }

        var flat = Flat(denominator);
        PaperBox[] level =
        [
            .. new[] { Side.North, Side.South }.SelectMany(s => Boxes(s, Lay(s, denominator), flat))
                .Select(b => b.Grown(standard.SmallestGap)),
        ];
        for (int steps = 1; steps <= MostSteps && Boxes(side, laid, flat).Any(t => level.Any(b => b.Overlaps(t))); steps++)
        {
            laid = LayFrom(standard.FirstRow + (steps * Step), side, denominator);
        }

        return laid;
    }

    private static PlanTransform Flat(double denominator) => new(denominator, new PaperPoint(0, 0));

    private IEnumerable<PaperBox> Boxes(Side side, IEnumerable<LaidRow> laid, PlanTransform transform)
        => new RowPlaces(transform, extent, side, standard).Boxes(laid);

    /// <param name="first">Of the first row from the extent, paper mm.</param>
    private List<LaidRow> LayFrom(double first, Side side, double denominator)
    {
        var ordered = rows.Where(r => r.Side == side).OrderBy(r => r.Form == DimensionForm.Overall).ToList();
        var laid = new List<LaidRow>();
        bool textOutward = side is Side.North or Side.West;
        double at = first;
        foreach (var row in ordered)
        {
            var texts = RowLayout.Texts(row, denominator, tape, standard);
            double above = RowLayout.Above(texts, standard);
            double line = textOutward || laid.Count == 0 && above <= RowLayout.BaseAbove(standard)
                ? at
                : at + above - RowLayout.BaseAbove(standard);
            double outer = line + (textOutward ? above : standard.ExtensionOvershoot + standard.SmallestGap);
            laid.Add(new LaidRow(row, texts, line, outer));
            at = textOutward ? line + Math.Max(standard.RowPitch, above + standard.ExtensionOvershoot) : line + standard.RowPitch;
        }

        return laid;
    }

    private static bool SameStretches(DimensionRow a, DimensionRow b) =>
        a.Form == b.Form && a.Stops.Select(s => s.Along).ToHashSet().SetEquals(b.Stops.Select(s => s.Along));
}

/// <param name="Line">Distance of the dimension line from the extent, paper mm.</param>
/// <param name="Outer">Distance of all that belongs to the row.</param>
internal sealed record LaidRow(DimensionRow Row, IReadOnlyList<RowText> Texts, double Line, double Outer);
