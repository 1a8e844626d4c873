using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Hatching;
using Floorplan.Drawing.Labels;
using Floorplan.Drawing.Lettering;
using Floorplan.Drawing.Scene;
using Floorplan.Drawing.Views;
using Floorplan.Drawing.Views.Openings;
using Floorplan.Drawing.Views.Rooms;
using Floorplan.Drawing.Views.Stations;
using Floorplan.Sizing;
using Floorplan.Sizing.Simulation.Motion;

namespace Floorplan.Drawing.Moving;

/// <summary>What stands still in a picture of the day: the plan, its ways, and a strip under it with clock, count and key.</summary>
internal sealed class MovingGround
{
    /// <summary>Own choice: a screen shows it whole, and A4 or letter holds a still of it.</summary>
    private const double Widest = 270;
    private const double Tallest = 165;
    private const double Strip = 37;

    /// <summary>What its longest line takes, mm.</summary>
    private const double NarrowestStrip = 175;
    private const double Margin = 4;
    private const double StepAside = 2.3;
    private const string Alphabet = "ABCDEFGHIJKLMNOPQRSTUVWXYZ";

    /// <summary>Of the clock and the count out.</summary>
    public const double Larger = 2;

    private readonly SceneBuilder scene;
    private readonly MotionLayer layer;
    private readonly PaperSpace size;
    private readonly string title;
    private readonly Dictionary<string, string> marks;

    public MovingGround(PlanFacts facts, DayMotion motion)
    {
        Motion = motion;
        marks = MarksOf([.. motion.People.Select(p => p.Crew).Distinct()]);
        var plan = facts.Plan;
        title = SafeText.Clean(plan.Head.Title);
        var stations = facts.Day.Planned.Stations;
        layer = new MotionLayer(
            plan, motion,
            [
                .. motion.Steps.Where(s => stations[s.Step] is not null)
                    .Select(s => (s.Step, stations[s.Step]!, DigitsOf(s.Counts.Max(c => Math.Max(c.InPlaces, c.Waiting))))),
            ]);
        var view = new PlanView(
            title, plan,
            [
                new StationLayer(plan, StationLook.Quiet), new RailLayer(plan), new WallLayer(plan), new OpeningLayer(plan), layer,
                new EndMarkLayer(plan), new RoomNameLayer(facts),
            ]);
        var scales = ScaleSeries.For(plan.Units);
        double denominator = scales.FirstOrDefault(s => Fits(view.Measure(s)), scales[^1]);
        var space = view.Measure(denominator);
        size = new PaperSpace(Math.Max(space.Width, NarrowestStrip), space.Height + Strip);
        scene = new SceneBuilder(denominator);
        var labels = new LabelPlacer(scene);
        var box = PaperBox.At(new((size.Width - space.Width) / 2, 0), space.Width, space.Height);
        view.Draw(new ViewCanvas(scene, labels, box, denominator, DrawingStandard.For(plan.Units)));
        labels.Place(box);
        SceneHatches.Draw(scene);
        Unit = facts.Day.Planned.Things;
        Key(space.Height);
    }

    public DayMotion Motion { get; }

    public string Unit { get; }

    public IReadOnlyList<CountBox> Boxes => layer.Boxes;

    /// <summary>Where the clock begins, at the top left.</summary>
    public PaperPoint Clock { get; private set; }

    /// <summary>Where the count of what is out begins.</summary>
    public PaperPoint Out { get; private set; }

    public int OutDigits => DigitsOf(Motion.Outs.Count);

    public PlanTransform Transform => layer.Transform!;

    public static int DigitsOf(int number) => FormattableString.Invariant($"{number}").Length;

    /// <summary>A letter for the crew and the number in it: <c>k1</c>.</summary>
    public string MarkOf(int person)
    {
        string crew = Motion.People[person].Crew;
        int number = Motion.People.Take(person + 1).Count(p => p.Crew == crew);
        return FormattableString.Invariant($"{marks[crew]}{number}");
    }

    /// <summary>The first letter where that tells crews apart, else letters in their order.</summary>
    private static Dictionary<string, string> MarksOf(IReadOnlyList<string> crews)
    {
        bool tells = crews.DistinctBy(c => char.ToLowerInvariant(c[0])).Count() == crews.Count && crews.All(c => char.IsAsciiLetter(c[0]));
        return crews.Index().ToDictionary(
            c => c.Item, c => tells ? c.Item[..1] : c.Index < Alphabet.Length ? Alphabet[c.Index..(c.Index + 1)] : "");
    }

    /// <summary>People who stand at one place are drawn beside each other, each always with the same little step aside.</summary>
    public static PaperPoint Aside(int person)
    {
        var (sin, cos) = Math.SinCos(person * 2.4);
        return new PaperPoint(Math.Round(StepAside * cos, 2), Math.Round(StepAside * sin, 2));
    }

    /// <param name="more">Drawn over it.</param>
    public SheetScene Scene(string what, IEnumerable<SceneItem> more) => new(
        "day", $"{title}: {what}",
        "The plan of the unit with people, loads and counts at their places at the time that the clock shows.", size.Width, size.Height,
        [.. scene.Items, .. more], scene.Denominator);

    private static bool Fits(PaperSpace space) => space.Width <= Widest && space.Height <= Tallest;

    private void Key(double top)
    {
        double y = top + 2;
        scene.Line(new(Margin, y), new(size.Width - Margin, y), new Pen(0.25), Layers.Legend);
        double letters = Larger * MovingLook.DigitLetters;
        double foot = y + 3 + letters;
        Clock = new(Margin, foot - letters - (Larger * (MovingLook.DigitHeight - MovingLook.DigitLetters) / 2));
        double afterClock = Margin + (5 * Larger * MovingLook.DigitWidth);
        Words("from the start of work", afterClock, foot, 3.5);
        double out_ = afterClock + TextMeasure.Width("from the start of work", 3.5) + 10;
        Out = new(out_, Clock.Y);
        Words(
            SafeText.Fit(SafeText.Clean($"{Unit} out"), 60, 3.5), out_ + (OutDigits * Larger * MovingLook.DigitWidth) + 1.5, foot, 3.5);
        double row = foot + 7;
        if (marks.Count > 0)
        {
            Sample(MovingLook.Person($"{marks.Values.First()}1", "key"), Margin + 3, row, PeopleWords());
            row += 7;
        }

        double x = Sample(Moved(MovingLook.Load(1, false)), Margin + 3, row, "one item on its way");
        if (Motion.Loads.Any(l => l.IsCarrier))
        {
            Sample(Moved(MovingLook.Load(8, true)), x, row, "trolley or tub, and how many are on it");
        }

        row += 7;
        var box = new CountBox(0, "key", new(Margin, row - (CountBox.Height / 2)), 1);
        box.Draw(scene);
        Words(
            "at a station: items at it, and on grey the items that wait for it; dashed: the ways of loads", box.Box.Right + 2, row + 1.25,
            2.5);
    }

    private string PeopleWords()
        => "people, by their crew: " + string.Join(", ", marks.Select(m => $"{m.Value} {SafeText.Clean(m.Key)}"));

    private static IReadOnlyList<SceneItem> Moved(IReadOnlyList<SceneItem> load)
        => [.. load.Select(i => i.Moved(new PaperPoint(-MovingLook.BesidePerson.X, -MovingLook.BesidePerson.Y)))];

    private double Sample(IReadOnlyList<SceneItem> sample, double x, double y, string words)
    {
        foreach (var item in sample)
        {
            scene.Add(item.Moved(new PaperPoint(x, y)), Band.Text);
        }

        string said = SafeText.Fit(words, size.Width - x - 6, 2.5);
        Words(said, x + 4, y + 1.25, 2.5);
        return x + 4 + TextMeasure.Width(said, 2.5) + 8;
    }

    private void Words(string words, double x, double foot, double letters)
        => scene.Text(new TextItem(words, new(x, foot), letters, TextAnchor.Start, Layers.Legend));
}
