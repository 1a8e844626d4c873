using Floorplan.Language.Quantities;
using Floorplan.Model.Shells;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Weights.Crane;

/// <summary>A container on a crane, with everything full or with everything empty; nobody is in it.</summary>
/// <param name="Corners">South-west, south-east, north-west, north-east.</param>
/// <param name="OffShare">How far the weight lies off the middle along the box, of its length.</param>
/// <param name="Angle">Of the legs above level, in degrees.</param>
/// <param name="WorstLeg">By the corner that carries most.</param>
/// <param name="PairLeg">Where two legs carry all.</param>
public sealed record CraneLift(
    bool IsFull, Figure Total, CentreOfWeight Centre, IReadOnlyList<Figure> Corners, Figure OffShare, Figure Legs, Figure Angle,
    Figure WorstLeg, Figure PairLeg)
{
    /// <summary>Legs are as long as this where that reaches the corners steeply enough, in whole metres or feet.</summary>
    private const double UsualMetres = 6;

    /// <inheritdoc cref="UsualMetres"/>
    private const double UsualFeet = 20;

    /// <summary>Flatter legs than this are not used; degrees.</summary>
    private const double Flattest = 45;

    private static readonly string[] Names = ["south-west", "south-east", "north-west", "north-east"];
    private static readonly Source Statics = new("statics: moments about both middle lines", Origin.CommonPractice);
    private static readonly Source Hook = new("the hook hangs over the middle of the corners", Origin.OwnAssumption);
    private static readonly Source Own = new("legs of 6 m (20 ft), or longer so that they stand at 45° or more", Origin.OwnAssumption);
    private static readonly Source Pair = new(
        "lifting practice: of four legs on a stiff load only two on a diagonal are counted", Origin.CommonPractice);

    /// <summary>In the order in which they are worked out.</summary>
    public IReadOnlyList<Figure> Figures { get; private init; } = [];

    public Figure Heaviest => Corners.MaxBy(c => c.Value)!;

    public Figure Lightest => Corners.MinBy(c => c.Value)!;

    /// <summary>Null for what is no container, and without a weight of the bare box.</summary>
    internal static CraneLift? Of(PlanFacts facts, bool full)
    {
        var work = new Workings(facts.Plan.Units);
        var shell = facts.Plan.Shell;
        if (shell.Kind != ShellKind.Container || !facts.Weight.IsWhole
            || (full ? facts.CentreFull : facts.CentreEmpty) is not { } centre)
        {
            return null;
        }

        work.Add(centre.East);
        work.Add(centre.North);

        var total = facts.Weight.Of(full);
        string state = full ? "full" : "empty";
        var (along, across) = (Castings.Along(shell), Castings.Across);
        var apart = FigureInput.Taken(
            "corners apart", $"{WorkingText.Long(along, work.Units)} and {WorkingText.Long(across, work.Units)}", Castings.Source);
        List<Figure> corners = [.. Names.Select(Corner)];
        double length = shell.Outside.EnvelopeInternal.Width;
        var share = work.Of(
            $"weight off the middle of the length, {state}", Figure.WholePlan, Math.Abs(centre.East.Value) / length, Measure.Ratio,
            "distance off the middle / outside length",
            $"{WorkingText.Long(Math.Abs(centre.East.Value), work.Units)} / {WorkingText.Long(length, work.Units)}", Statics,
            FigureInput.Of(centre.East), FigureInput.Said("outside length", WorkingText.Long(length, work.Units), shell.Span));
        var (legs, angle) = LegsOf(along, across, state, apart, work);
        var worst = corners.MaxBy(c => c.Value)!;
        return new CraneLift(
            full, total, centre, corners, share, legs, angle,
            Force("force in the worst leg", worst, SlingLegs.Force(Math.Max(0, worst.Value), angle.Value), "", Statics),
            Force("force in a leg where two carry all", total, SlingLegs.PairForce(total.Value, angle.Value), " / 2", Pair))
        {
            Figures = work.Figures,
        };

        Figure Corner(string name)
        {
            var (east, north) = (name.EndsWith("east", StringComparison.Ordinal) ? 1 : -1, name.StartsWith('n') ? 1 : -1);
            return work.Of(
                $"weight on the {name} corner, {state}", Figure.WholePlan,
                CornerLoad.Of(total.Value, east * centre.East.Value, along, north * centre.North.Value, across), Measure.Mass,
                "weight / 4 x (1 + 2 x off along / corners along) x (1 + 2 x off across / corners across)",
                $"{total.Text} / 4 x (1 + 2 x {WorkingText.Long(east * centre.East.Value, work.Units)} / "
                    + $"{WorkingText.Long(along, work.Units)}) x (1 + 2 x {WorkingText.Long(north * centre.North.Value, work.Units)} / "
                    + $"{WorkingText.Long(across, work.Units)})",
                Statics, FigureInput.Of(total), FigureInput.Of(centre.East), FigureInput.Of(centre.North), apart);
        }

        Figure Force(string name, Figure carries, double newtons, string part, Source source) => work.Of(
            $"{name}, {state}", Figure.WholePlan, newtons, Measure.Force, $"weight{part} x gravity / sine of the angle",
            $"{carries.Text}{part} x 9.80665 m/s² / sin {angle.Text}", source, FigureInput.Of(carries), FigureInput.Of(angle));
    }

    private static (Figure Legs, Figure Angle) LegsOf(double along, double across, string state, FigureInput apart, Workings work)
    {
        double least = double.Hypot(along, across) / 2 / Math.Cos(double.DegreesToRadians(Flattest));
        var (unit, usual) = work.Units == UnitSystem.Metric ? (1000, UsualMetres) : (InchPound.MillimetresPerFoot, UsualFeet);
        double leg = unit * Math.Max(usual, Math.Ceiling(least / unit));
        string text = WorkingText.Long(leg, work.Units);
        var legs = work.Of(
            $"length of the legs, {state}", Figure.WholePlan, leg, QuantityKind.Length, text, "as taken", text, Own,
            FigureInput.Taken("length of the legs", text, Own));
        double degrees = SlingLegs.Angle(leg, along, across) ?? Flattest;
        var angle = work.Of(
            $"angle of the legs, {state}", Figure.WholePlan, degrees, QuantityKind.Ratio, $"{QuantityText.Plain(degrees, 1)}°",
            "arc cosine of (half the diagonal of the corners / length of the legs)",
            $"acos ({WorkingText.Long(double.Hypot(along, across) / 2, work.Units)} / {text})", Hook, apart, FigureInput.Of(legs));
        return (legs, angle);
    }
}
