using Floorplan.Language.Quantities;
using Floorplan.Model;
using Floorplan.Model.Openings;
using Floorplan.Model.Rooms;
using Floorplan.Model.Shells;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Weights;

/// <summary>
/// What is built into a box that is lifted or towed. Openings are not taken off: their leaves, panes and hatches weigh about as much as the
/// wall (own assumption); the shell's own doors belong to its bare weight. A shed stays where it is, so that it has no layers here.
/// </summary>
public static class ShellLayers
{
    /// <summary>Names of the layers that stand on the floor.</summary>
    public const string Floor = "floor build-up";
    public const string Partitions = "partitions";

    /// <summary>For rules that judge by weights.</summary>
    public static Source Usual { get; } = new(
        "linings, floor and partitions as the plan says what they are of, else panels, screed where the floor has falls, or plywood; "
        + "weights of BS 648:1964",
        Origin.OwnAssumption);

    private const string PanelUsual = "unlined walls are rare; most linings and partitions are sandwich panels";
    private const string FloorWithFalls = "falls are made in screed";
    private const string FloorWithout = "a floor without falls is plywood";
    private static readonly Source Geometry = new("geometry of the plan", Origin.CommonPractice);

    internal static IReadOnlyList<Layer> Of(PlanFacts facts)
    {
        var plan = facts.Plan;
        var shell = plan.Shell;
        if (shell.Kind == ShellKind.Shed)
        {
            return [];
        }

        var layers = new List<Layer>();
        var middle = shell.Finished.Centroid;
        if (shell.WallLining > Length.Zero)
        {
            layers.Add(Layer.Of(
                "wall lining", Walls(plan), shell.WallLining, shell.WallLiningOf, LayerMaterials.Panel, PanelUsual, shell.Span,
                plan.Units));
        }

        if (shell.CeilingLining > Length.Zero)
        {
            layers.Add(Layer.Of(
                "ceiling lining", new LayerPlace(FloorArea(plan, "ceiling lining"), middle.X, middle.Y), shell.CeilingLining,
                shell.CeilingLiningOf, LayerMaterials.Panel, PanelUsual, shell.Span, plan.Units));
        }

        if (shell.FloorBuildUp > Length.Zero)
        {
            bool falls = plan.Rooms.Any(r => r.Falls is not null);
            layers.Add(Layer.Of(
                Floor, new LayerPlace(FloorArea(plan, Floor), middle.X, middle.Y, IsFloor: true), shell.FloorBuildUp,
                shell.FloorBuildUpOf, falls ? LayerMaterials.Screed : LayerMaterials.Plywood,
                falls ? FloorWithFalls : FloorWithout, shell.Span, plan.Units));
        }

        if (plan.Partitions.Count > 0)
        {
            layers.Add(Layer.Of(
                Partitions, PartitionPlace(plan), plan.Partitions[0].Thickness, plan.Partitions[0].BuiltOf, LayerMaterials.Panel,
                PanelUsual, plan.Rooms[0].Span, plan.Units));
        }

        return layers;
    }

    /// <summary>Of one face, in m2: where two partitions meet, the square that they share counts for one.</summary>
    public static double AreaOf(Partition partition) => LengthOf(partition) / 1000 * partition.Height.Metres;

    private static double LengthOf(Partition partition) => partition.Outline.Area / partition.Thickness.Millimetres;

    private static LayerPlace Walls(Plan plan)
    {
        double round = plan.Shell.Finished.ExteriorRing.Length;
        var high = plan.Shell.CeilingHeight;
        var door = plan.Openings.FirstOrDefault(o => o.Kind == OpeningKind.CargoDoor);
        double doorArea = door is null ? 0 : door.Width.Metres * door.Height.Metres;
        double whole = round / 1000 * high.Metres;
        double area = whole - doorArea;
        string less = door is null ? "" : $" - {QuantityText.Of(doorArea, Measure.Area, plan.Units)}";
        var figure = Area(
            plan, "wall lining", area, "length round the inside x height, less the shell's own doors",
            $"{WorkingText.Long(round, plan.Units)} x {WorkingText.Long(high.Millimetres, plan.Units)}{less}");
        var ring = plan.Shell.Finished.ExteriorRing.Centroid;
        var moment = Moment.Of(whole, ring.X, ring.Y)
            - Moment.Of(doorArea, door?.Centre.X.Millimetres ?? 0, door?.Centre.Y.Millimetres ?? 0);
        var middle = plan.Shell.Finished.Centroid;
        return area > 0 ? new LayerPlace(figure, moment.East / area, moment.North / area) : new LayerPlace(figure, middle.X, middle.Y);
    }

    private static Figure FloorArea(Plan plan, string of)
    {
        var box = plan.Shell.Finished.EnvelopeInternal;
        return Area(
            plan, of, plan.Shell.Finished.Area / 1e6, "length x width inside",
            $"{WorkingText.Long(box.Width, plan.Units)} x {WorkingText.Long(box.Height, plan.Units)}");
    }

    private static LayerPlace PartitionPlace(Plan plan)
    {
        double run = plan.Partitions.Sum(LengthOf);
        double area = plan.Partitions.Sum(AreaOf);
        var moment = Moment.Sum(plan.Partitions.Select(p => Moment.Of(AreaOf(p), p.Outline.Centroid.X, p.Outline.Centroid.Y)));
        var figure = Area(
            plan, Partitions, area, "length of all partitions x height",
            $"{WorkingText.Long(run, plan.Units)} x {WorkingText.Long(plan.Partitions[0].Height.Millimetres, plan.Units)}");
        return new LayerPlace(figure, moment.East / area, moment.North / area);
    }

    private static Figure Area(Plan plan, string of, double squareMetres, string formula, string substituted) => new()
    {
        Name = $"area of {of}",
        Of = Figure.WholePlan,
        Value = squareMetres,
        Kind = QuantityKind.Area,
        Text = QuantityText.Of(squareMetres, Measure.Area, plan.Units),
        Inputs = [FigureInput.Said("sizes inside", plan.Shell.Name, plan.Shell.Span)],
        Formula = formula,
        Substituted = substituted,
        Source = Geometry,
    };
}
