using Floorplan.Drawing.Charts;
using Floorplan.Drawing.Scene;
using Floorplan.Drawing.Svg;
using Floorplan.Sizing;
using Floorplan.Sizing.Simulation.Line;
using Floorplan.Sizing.Simulation.Motion;

namespace Floorplan.Drawing.Moving;

/// <summary>
/// A stretch of the day as one SVG that plays in any browser, by CSS alone: no script. All that moves has one animation of the length of
/// the whole stretch, so that all stay in step and begin again together. Where a reader's device asks for little motion it stands still.
/// </summary>
public static class MovingDay
{
    /// <summary>A larger file is slow in a browser; own bound, in letters.</summary>
    public const int Largest = 8_000_000;

    /// <summary>Out of sight.</summary>
    private static readonly PaperPoint Away = new(-500, -500);

    /// <param name="from">In ticks from the start of work.</param>
    /// <param name="to">Later than <paramref name="from"/>.</param>
    /// <param name="speed">So many seconds of the day go by in one.</param>
    public static string Write(PlanFacts facts, DayMotion motion, long from, long to, double speed)
    {
        var ground = new MovingGround(facts, motion);
        var parts = new MovingParts(from, to);
        foreach (var box in ground.Boxes)
        {
            var counts = motion.Steps.First(s => s.Step == box.Step).Counts;
            parts.Number([.. counts.Select(c => (c.At, c.InPlaces))], box.Number(false), box.Digits, 1);
            parts.Number([.. counts.Select(c => (c.At, c.Waiting))], box.Number(true), box.Digits, 1);
        }

        Loads(ground, parts, from, to);
        for (int p = 0; p < motion.People.Count; p++)
        {
            var frames = new Keyframes(from, to);
            var points = motion.People[p].Track.Between(from, to);
            foreach (var point in points)
            {
                frames.Add(point.At, ground.Transform.ToPaper(point.X, point.Y));
            }

            var items = MovingLook.Person(ground.MarkOf(p), motion.People[p].Name).Select(i => i.Moved(MovingGround.Aside(p))).ToList();
            parts.Mover(frames, ground.Transform.ToPaper(points[0].X, points[0].Y), SvgWriter.Fragment(items), "person");
        }

        parts.Number([.. motion.Outs.Select((at, i) => (at, i + 1)).Prepend((0, 0))], ground.Out, ground.OutDigits, MovingGround.Larger);
        parts.Clock(ground.Clock, MovingGround.Larger);
        string seconds = SvgNumber.Text(Ticks.Seconds(to - from) / speed);
        string what = $"the day from {ClockText.Of(from)} to {ClockText.Of(to)}";
        return SvgWriter.Write(ground.Scene(what, []), parts.Style(seconds), parts.Elements);
    }

    /// <summary>Few elements play all loads, one after the other; each shows loads of one look.</summary>
    private static void Loads(MovingGround ground, MovingParts parts, long from, long to)
    {
        var looks = ground.Motion.Loads.Where(l => l.From < to && l.Until > from && l.Until > l.From)
            .OrderBy(l => l.From).GroupBy(l => (l.IsCarrier, l.Items));
        foreach (var look in looks)
        {
            var free = new List<(List<MovingLoad> Loads, long Until)>();
            foreach (var load in look)
            {
                int one = free.FindIndex(f => f.Until < load.From);
                if (one < 0)
                {
                    free.Add(([load], load.Until));
                }
                else
                {
                    free[one].Loads.Add(load);
                    free[one] = (free[one].Loads, load.Until);
                }
            }

            string drawn = SvgWriter.Fragment(MovingLook.Load(look.Key.Items, look.Key.IsCarrier));
            foreach (var (loads, _) in free)
            {
                parts.Mover(Frames(ground, loads, from, to), Start(ground, loads, from), drawn, "load");
            }
        }
    }

    private static PaperPoint Start(MovingGround ground, IReadOnlyList<MovingLoad> loads, long from)
        => loads[0].From <= from && loads[0].Track.At(from) is var (x, y) ? ground.Transform.ToPaper(x, y) : Away;

    private static Keyframes Frames(MovingGround ground, IReadOnlyList<MovingLoad> loads, long from, long to)
    {
        var frames = new Keyframes(from, to);
        frames.Add(from, Start(ground, loads, from));
        foreach (var load in loads)
        {
            // Away until the very moment that it sets out.
            if (load.From > from)
            {
                frames.Add(load.From, Away);
            }

            foreach (var point in load.Track.Between(Math.Max(from, load.From), Math.Min(to, load.Until)))
            {
                frames.Add(point.At, ground.Transform.ToPaper(point.X, point.Y));
            }

            if (load.Until < to)
            {
                frames.Add(load.Until, Away);
            }
        }

        return frames;
    }
}
