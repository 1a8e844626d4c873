using Floorplan.Drawing.Charts;
using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Scene;
using Floorplan.Sizing;
using Floorplan.Sizing.Simulation.Motion;

namespace Floorplan.Drawing.Moving;

/// <summary>The plan at one moment of the day, for print.</summary>
public static class StillDay
{
    /// <param name="at">In ticks from the start of work.</param>
    public static SheetScene Draw(PlanFacts facts, DayMotion motion, long at)
    {
        var ground = new MovingGround(facts, motion);
        var items = new List<SceneItem>();
        foreach (var box in ground.Boxes)
        {
            var (inPlaces, waiting) = motion.Steps.First(s => s.Step == box.Step).At(at);
            items.AddRange(Number(inPlaces, box.Number(false), box.Digits, 1, "count:" + box.Of));
            items.AddRange(Number(waiting, box.Number(true), box.Digits, 1, "waiting:" + box.Of));
        }

        for (int p = 0; p < motion.People.Count; p++)
        {
            var place = ground.Transform.ToPaper(Coordinate(motion.People[p].Track, at)) + MovingGround.Aside(p);
            items.AddRange(MovingLook.Person(ground.MarkOf(p), motion.People[p].Name).Select(i => i.Moved(place)));
        }

        foreach (var load in motion.Loads.Where(l => l.From <= at && at < l.Until))
        {
            var place = ground.Transform.ToPaper(Coordinate(load.Track, at));
            items.AddRange(MovingLook.Load(load.Items, load.IsCarrier).Select(i => i.Moved(place)));
        }

        string clock = ClockText.Of(at);
        items.AddRange(Text(clock, ground.Clock, MovingGround.Larger, "clock"));
        items.AddRange(Number(motion.Outs.Count(o => o <= at), ground.Out, ground.OutDigits, MovingGround.Larger, "out"));
        return ground.Scene($"the day at {clock}", items);
    }

    private static NetTopologySuite.Geometries.Coordinate Coordinate(MotionTrack track, long at)
        => track.At(at) is var (x, y) ? new(x, y) : new();

    private static IEnumerable<SceneItem> Number(int number, PaperPoint at, int digits, double larger, string group)
        => Text(FormattableString.Invariant($"{number}").PadLeft(digits), at, larger, group);

    /// <summary>Figure by figure, each as wide, as in the picture that moves.</summary>
    private static IEnumerable<SceneItem> Text(string text, PaperPoint at, double larger, string group)
    {
        for (int i = 0; i < text.Length; i++)
        {
            if (text[i] != ' ')
            {
                yield return new TextItem(
                    text[i..(i + 1)],
                    new(
                        at.X + ((i + 0.5) * larger * MovingLook.DigitWidth),
                        at.Y + (larger * (MovingLook.DigitHeight + MovingLook.DigitLetters) / 2)),
                    larger * MovingLook.DigitLetters, TextAnchor.Middle, Layers.Marks, group);
            }
        }
    }
}
