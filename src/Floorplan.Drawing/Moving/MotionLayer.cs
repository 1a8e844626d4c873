using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Scene;
using Floorplan.Drawing.Views;
using Floorplan.Model;
using Floorplan.Model.Stations;
using Floorplan.Sizing.Simulation.Motion;
using NetTopologySuite.Geometries;

namespace Floorplan.Drawing.Moving;

/// <summary>The ways that loads take, and room for the counts at the stations; what moves is drawn over it.</summary>
internal sealed class MotionLayer(Plan plan, DayMotion motion, IReadOnlyList<(int Step, Station Station, int Digits)> counted)
    : PlanLayer(plan)
{
    private const double Clear = 0.6;
    private readonly List<CountBox> boxes = [];

    public IReadOnlyList<CountBox> Boxes => boxes;

    /// <summary>Of the view, once it is drawn.</summary>
    public PlanTransform? Transform { get; private set; }

    /// <summary>People come from outside.</summary>
    public override Envelope Extent
    {
        get
        {
            var extent = new Envelope();
            var ways = motion.Routes.Moves.Concat(motion.Routes.Bins).OfType<IReadOnlyList<(double X, double Y)>>();
            var people = motion.People.SelectMany(p => p.Track.Points).Select(p => (p.X, p.Y));
            foreach (var (x, y) in ways.SelectMany(r => r).Concat(people))
            {
                extent.ExpandToInclude(x, y);
            }

            return extent;
        }
    }

    public override void Draw(PlanCanvas canvas)
    {
        Transform = canvas.Transform;
        foreach (var route in motion.Routes.Moves.OfType<IReadOnlyList<(double X, double Y)>>())
        {
            canvas.Scene.Polyline(
                [.. route.Select(p => canvas.Transform.ToPaper(p.X, p.Y))], false, new Pen(0.25, Palette.Grey, [1.5, 1]), Layers.Flow,
                "way");
        }

        foreach (var (step, station, digits) in counted)
        {
            var box = Place(step, station, digits, canvas.Transform.ToPaper(station.Bounds));
            boxes.Add(box);
            box.Draw(canvas.Scene);
            canvas.Labels.KeepOut(box.Box);
        }
    }

    /// <summary>In the middle of the station, or beside that where another count stands there.</summary>
    private CountBox Place(int step, Station station, int digits, PaperBox on)
    {
        double width = CountBox.WidthOf(digits);
        PaperPoint[] middles =
        [
            on.Centre, new(on.Centre.X, on.Top - CountBox.Height), new(on.Centre.X, on.Bottom + CountBox.Height),
            new(on.Left - width, on.Centre.Y), new(on.Right + width, on.Centre.Y),
        ];
        PaperPoint Corner(PaperPoint middle) => new(middle.X - (width / 2), middle.Y - (CountBox.Height / 2));
        var made = middles.Select(m => new CountBox(step, station.Id, Corner(m), digits)).ToList();
        return made.Find(b => boxes.TrueForAll(o => !o.Box.Grown(Clear).Overlaps(b.Box))) ?? made[0];
    }
}
