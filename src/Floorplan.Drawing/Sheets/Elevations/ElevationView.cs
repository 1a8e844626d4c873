using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Dimensions;
using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Labels;
using Floorplan.Drawing.Scene;
using Floorplan.Drawing.Symbols;
using Floorplan.Drawing.Symbols.Services;
using Floorplan.Drawing.Views;
using Floorplan.Drawing.Views.Openings;
using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax;
using Floorplan.Model.Openings;

namespace Floorplan.Drawing.Sheets.Elevations;

/// <summary>One wall seen from inside: what stands along it, openings, points, partitions, with heights at its ends.</summary>
internal sealed class ElevationView : ISheetView
{
    private const double Margin = 12;

    /// <summary>Under a view stands its title, with paper of its own.</summary>
    private const double Bottom = 7;

    /// <summary>Above a view the figures of its upright rows reach beyond its top; those in feet are longer.</summary>
    private const double Top = 12;
    private const double TopInFeet = 19;

    private readonly InsideFace face;
    private readonly bool feet;
    private readonly DrawingStandard standard;
    private readonly DimensionSet dimensions;

    public ElevationView(InsideFace face, UnitSystem units)
    {
        this.face = face;
        feet = units == UnitSystem.Feet;
        standard = DrawingStandard.For(units);
        dimensions = new DimensionSet(face.Extent, Tape.For(units), standard);
        AddHeights();
    }

    public string Title => face.Title;

    public bool IsPlan => false;

    public double Density => 0.55;

    public PaperSpace Measure(double denominator) => new(
        (face.Extent.Width / denominator) + Outside(Side.West, denominator) + Outside(Side.East, denominator),
        (face.Extent.Height / denominator) + Outside(Side.North, denominator) + Outside(Side.South, denominator));

    public void Draw(ViewCanvas canvas)
    {
        var transform = new PlanTransform(canvas.Denominator, new PaperPoint(
            canvas.Box.Left + Outside(Side.West, canvas.Denominator),
            canvas.Box.Top + Outside(Side.North, canvas.Denominator) + (face.Extent.MaxY / canvas.Denominator)));
        canvas.Scene.SetDatum(transform.ToPaper(face.IsMirrored ? face.Extent.MaxX : 0, 0));
        dimensions.Draw(canvas.Scene, transform);
        canvas.Scene.Rectangle(transform.ToPaper(face.Extent), new Pen(standard.Wide), Layers.Wall, "wall", Band.Wall);
        foreach (var partition in face.Partitions)
        {
            ElevationSymbols.Partition(
                new SymbolBrush(canvas.Scene, standard, Layers.Wall, "partition"), transform.ToPaper(partition));
        }

        foreach (var station in face.Stations)
        {
            DrawStation(canvas, transform, station);
        }

        // Over what stands before them, so that a hatch behind a bench is seen.
        foreach (var opening in face.Openings)
        {
            DrawOpening(canvas, transform, opening);
        }

        foreach (var point in face.Points)
        {
            DrawPoint(canvas, transform, point);
        }
    }

    /// <summary>
    /// Left, openings and the ceiling; right, tops and undersides of what stands along the wall. All from the finished floor.
    /// </summary>
    private void AddHeights()
    {
        dimensions.Add(new DimensionRow(
            Side.West,
            DimensionForm.Running,
            [
                new(Length.Zero), new(face.Height),
                .. face.Openings.SelectMany(o => new DimensionStop[] { new(o.Sill), new(o.Sill + o.Height) })],
            "dimension:openings"));
        dimensions.Add(new DimensionRow(
            Side.East,
            DimensionForm.Running,
            [
                new(Length.Zero), .. face.Stations.SelectMany(s => new DimensionStop[] { new(s.Bottom), new(s.Top) }),
                .. face.Points.Select(p => new DimensionStop(p.Height!.Value))],
            "dimension:things"));
    }

    private void DrawOpening(ViewCanvas canvas, PlanTransform transform, Opening opening)
    {
        string group = "opening:" + opening.Id;
        var box = transform.ToPaper(face.Rectangle(opening));
        canvas.Scene.Rectangle(box, new Pen(standard.Text), opening.Kind == OpeningKind.Window ? Layers.Glazing : Layers.Door, group);
        canvas.Labels.Add(new LabelRequest
        {
            Id = group,
            Lines = Marks.Lines(OpeningLayer.Mark(opening)),
            KeyText = OpeningLayer.Mark(opening),
            Target = box,
            Positions =
                [
                    LabelPosition.InsideTopLeft, LabelPosition.InsideTopRight, LabelPosition.Inside, LabelPosition.Above,
                    LabelPosition.Right, LabelPosition.Left],
            Priority = LabelPriority.Opening,
            CapHeight = standard.NoteHeight,
            Tag = TagShape.Box,
            Group = group,
        });
    }

    private void DrawStation(ViewCanvas canvas, PlanTransform transform, Model.Stations.Station station)
    {
        string group = "station:" + station.Id;
        var box = transform.ToPaper(face.Rectangle(station));
        ElevationSymbols.Item(new SymbolBrush(canvas.Scene, standard, Layers.Equipment, group), box, station.Hung);
        canvas.Labels.Add(new LabelRequest
        {
            Id = group,
            Lines = [FormattableString.Invariant($"{station.Item}")],
            Target = box,
            Positions =
                [
                    LabelPosition.Inside, LabelPosition.InsideTopLeft, LabelPosition.InsideBottomRight, LabelPosition.Above,
                    LabelPosition.Right, LabelPosition.Left],
            Priority = LabelPriority.Item,
            CapHeight = standard.NoteHeight,
            SmallestCapHeight = standard.TagHeight,
            Tag = TagShape.Circle,
            Group = group,
        });
    }

    private void DrawPoint(ViewCanvas canvas, PlanTransform transform, Model.Services.ServicePoint point)
    {
        string group = "service:" + point.Id;
        var (u, v) = face.Place(point);
        var at = transform.ToPaper(u.Millimetres, v.Millimetres);
        ElevationSymbols.Point(
            new SymbolBrush(canvas.Scene, standard, ServiceSymbols.LayerOf(point), group, Band.Annotation), at);
        canvas.Labels.Add(new LabelRequest
        {
            Id = group,
            Lines = Marks.Lines(ServiceLayer.Mark(point)),
            KeyText = ServiceLayer.Mark(point),
            Target = PaperBox.Around(at, 2 * ElevationSymbols.PointRadius, 2 * ElevationSymbols.PointRadius),
            Positions = Views.LabelSides.AllRound,
            Priority = LabelPriority.Service,
            CapHeight = standard.NoteHeight,
            SmallestCapHeight = standard.TagHeight,
            Tag = TagShape.Capsule,
            LeadTo = at,
            Group = group,
        });
    }

    private double Outside(Side side, double denominator)
        => Math.Max(
            side switch
            {
                Side.North => feet ? TopInFeet : Top,
                Side.South => Bottom,
                _ => Margin,
            },
            dimensions.Depth(side, denominator));
}
