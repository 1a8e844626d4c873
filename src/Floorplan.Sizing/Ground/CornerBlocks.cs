using Floorplan.Language.Quantities;
using Floorplan.Sizing.Sizes;
using Floorplan.Sizing.Weights.Crane;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Ground;

/// <summary>Blocks under the four corners of a container, so large that the ground bears the heaviest corner at work.</summary>
/// <param name="Side">Of a square block, a size to order.</param>
internal sealed record CornerBlocks(Figure Corner, Figure Bearing, Figure Area, Figure Side, SizeTable Soils)
{
    /// <summary>1500 lb/sq ft, Pa.</summary>
    private const double Unknown = 1500 * PoundPerSquareFoot;
    private const double PoundPerSquareFoot = InchPound.PascalsPerPoundPerSquareInch / 144;

    private static readonly Source UnknownSoil = new(
        "24 CFR 3285.202: 1500 lb/sq ft where the soil is not known", Origin.FoundInPublicCopy, Force.Law);

    private static readonly Source Statics = new("statics: moments about both middle lines", Origin.CommonPractice);
    private static readonly Source Square = new("a square block, the side rounded up to 10 mm or 1 in", Origin.OwnAssumption);

    private static readonly (string Name, double Pascals)[] Known =
    [
        ("not known, clay, silt", Unknown), ("sand, silty gravel", 2000 * PoundPerSquareFoot),
        ("sandy gravel, gravel", 3000 * PoundPerSquareFoot),
    ];

    /// <summary>Null where the weight is nothing.</summary>
    public static CornerBlocks? Of(PlanFacts facts, Workings work)
    {
        var (shell, atWork) = (facts.Plan.Shell, facts.WorkingWeight);
        if (atWork.Together.Value <= 0)
        {
            return null;
        }

        var middle = shell.Outside.EnvelopeInternal.Centre;
        double east = Math.Abs((atWork.Moment.East / atWork.Together.Value) - middle.X);
        double north = Math.Abs((atWork.Moment.North / atWork.Together.Value) - middle.Y);
        double along = Castings.Along(shell);
        var corner = work.Of(
            "heaviest corner at work", Figure.WholePlan,
            CornerLoad.Of(atWork.Together.Value, east, along, north, Castings.Across), Measure.Mass,
            "weight / 4 x (1 + 2 x off along / corners along) x (1 + 2 x off across / corners across)",
            $"{atWork.Together.Text} / 4 x (1 + 2 x {WorkingText.Long(east, work.Units)} / {WorkingText.Long(along, work.Units)}) x (1 + "
                + $"2 x {WorkingText.Long(north, work.Units)} / {WorkingText.Long(Castings.Across, work.Units)})",
            Statics, FigureInput.Of(atWork.Together),
            FigureInput.Taken("corners apart", WorkingText.Long(along, work.Units), Castings.Source));
        string bears = work.Text(Unknown, Measure.SurfacePressure);
        var bearing = work.Of(
            "what the ground bears", Figure.WholePlan, Unknown, Measure.SurfacePressure, "as taken", bears, UnknownSoil,
            FigureInput.Taken("ground", "not said, " + bears, UnknownSoil));
        var area = work.Of(
            "area under a corner", Figure.WholePlan, AreaOf(corner.Value, Unknown), QuantityKind.Area,
            Fine(AreaOf(corner.Value, Unknown), work.Units), "weight x gravity / what the ground bears",
            $"{corner.Text} x 9.80665 m/s² / {bears}", Statics, FigureInput.Of(corner), FigureInput.Of(bearing));
        return new CornerBlocks(corner, bearing, area, SideOf(area, work), Table(corner, work));
    }

    /// <summary>m2.</summary>
    /// <param name="kilograms">On it.</param>
    /// <param name="pascals">That the ground bears.</param>
    internal static double AreaOf(double kilograms, double pascals) => kilograms * SlingLegs.Gravity / pascals;

    private static Figure SideOf(Figure area, Workings work)
    {
        double side = RoundedSide(area.Value, work.Units);
        return work.Of(
            "side of a block", Figure.WholePlan, side, QuantityKind.Length, QuantityText.Length(Length.FromMillimetres(side), work.Units),
            "square root of the area, rounded up", $"√{area.Text}", Square, FigureInput.Of(area));
    }

    private static double RoundedSide(double area, UnitSystem units)
    {
        double step = units == UnitSystem.Metric ? 10 : InchPound.MillimetresPerInch;
        return Math.Ceiling((Math.Sqrt(Math.Max(0, area)) * 1000 / step) - 1e-9) * step;
    }

    private static SizeTable Table(Figure corner, Workings work) => new(
        "Blocks under the corners", ["Ground", "Bears", "Area under a corner", "Square block"],
        [
            .. Known.Select(k => (IReadOnlyList<string>)
            [
                k.Name, work.Text(k.Pascals, Measure.SurfacePressure), Fine(AreaOf(corner.Value, k.Pascals), work.Units),
                QuantityText.Length(Length.FromMillimetres(RoundedSide(AreaOf(corner.Value, k.Pascals), work.Units)), work.Units),
            ]),
        ],
        [corner]);

    private static string Fine(double area, UnitSystem units) => QuantityText.Fine(area, Measure.Area, units);
}
