using System.Globalization;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using Floorplan.Drawing.Moving;
using Floorplan.Drawing.Scene;
using Floorplan.Model.Space;
using Floorplan.Sizing;
using Floorplan.Sizing.Simulation.Line;
using Floorplan.Sizing.Simulation.Motion;
using Floorplan.Sizing.Simulation.Plans;
using Floorplan.Tests.Checks.Support;
using Floorplan.Tests.Drawing.Support;
using NetTopologySuite.Geometries;
using Xunit;

namespace Floorplan.Tests.Drawing.Moving;

/// <summary>A picture of the day that moves shows what the run wrote down.</summary>
public sealed partial class MovingDayTests
{
    /// <summary>The issue's bound, bytes.</summary>
    private const int MostBytes = 2_000_000;

    /// <summary>A jump takes a millionth of an hour, and places are written to hundredths of a millimetre.</summary>
    private const double Near = 0.02;

    private const long Hour = Ticks.Hour;

    public static TheoryData<string> Plans => ["fish-20ft", "game-trailer", "goat-dairy-shed", "poultry-40ft", "vegetable-l-shed"];

    [Theory, MemberData(nameof(Plans))]
    public void It_is_well_formed_has_no_script_and_is_small_enough(string plan)
    {
        var facts = Facts(plan);
        string picture = MovingDay.Write(facts, DayMotion.Of(facts)!, Hour, 2 * Hour, 60);
        Assert.True(System.Text.Encoding.UTF8.GetByteCount(picture) < MostBytes, $"{picture.Length}");
        var all = XDocument.Parse(picture).Descendants().ToList();
        Assert.DoesNotContain(all, e => e.Name.LocalName is "script" or "foreignObject" or "image" or "a" or "iframe");
        Assert.DoesNotContain(
            all.SelectMany(e => e.Attributes()), a => a.Name.LocalName.StartsWith("on", StringComparison.OrdinalIgnoreCase));
        Assert.DoesNotContain("url(", picture, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("@import", picture, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("prefers-reduced-motion", picture, StringComparison.Ordinal);
        Assert.DoesNotContain("NaN", picture, StringComparison.Ordinal);
    }

    [Fact]
    public void A_whole_day_is_small_enough_to_be_written()
    {
        var facts = Facts("poultry-40ft");
        var motion = DayMotion.Of(facts)!;
        Assert.InRange(MovingDay.Write(facts, motion, 0, motion.End, 60).Length, 1, MovingDay.Largest);
    }

    /// <summary>Read from the picture itself: each person's frames, at moments of the hour, give the place that the run says.</summary>
    [Theory, MemberData(nameof(Plans))]
    public void People_are_where_the_run_says_at_any_moment(string plan)
    {
        var facts = Facts(plan);
        var motion = DayMotion.Of(facts)!;
        string picture = MovingDay.Write(facts, motion, Hour, 2 * Hour, 60);
        var people = Movers(picture, "person");
        Assert.Equal(motion.People.Count, people.Count);
        var ground = new MovingGround(facts, motion);
        foreach (var (person, frames) in motion.People.Zip(people))
        {
            for (int i = 0; i < 20; i++)
            {
                long at = Hour + (i * Hour / 20) + (Ticks.Second * 7);
                var (x, y) = person.Track.At(at);
                var said = ground.Transform.ToPaper(x, y);
                var shown = PlaceAt(frames, (at - Hour) / (double)Hour);
                Assert.True(
                    Math.Abs(said.X - shown.X) < Near && Math.Abs(said.Y - shown.Y) < Near,
                    $"{person.Name} at {at / Ticks.Second} s: {said} is shown at {shown}");
            }
        }
    }

    [Theory, MemberData(nameof(Plans))]
    public void Who_carries_is_on_the_way_that_the_checks_found(string plan)
    {
        var facts = Facts(plan);
        var record = new LineRecord();
        var outcome = PlannedDay.Run(facts.Day.Planned.Line!, record: record);
        var motion = DayMotion.Of(facts)!;
        var routes = facts.Space.LegRoutes.Where(l => l.Route is not null).ToList();
        var carries = record.People.Where(s => s.Does is PersonDoes.Carry or PersonDoes.BringBack).ToList();
        Assert.NotEmpty(carries);
        foreach (var span in carries)
        {
            foreach (double share in (double[])[0.2, 0.5, 0.8])
            {
                var (x, y) = motion.People[span.Person].Track.At(span.From + (long)(share * (span.Until - span.From)));
                double off = routes.Min(r => r.Route!.Path.Distance(new Point(x, y)));
                Assert.True(off < 1, $"{span} is {off:0} mm off every way");
            }
        }

        Assert.Equal(outcome.End, motion.End);
    }

    [Theory, MemberData(nameof(Plans))]
    public void Counts_of_stations_and_of_what_is_out_are_those_of_the_run(string plan)
    {
        var facts = Facts(plan);
        var motion = DayMotion.Of(facts)!;
        var day = facts.Day;
        Assert.Equal(day.Paced!.Outs, motion.Outs);
        // At the end all is in the stores.
        foreach (var store in DayStore.Of(facts.Plan, day))
        {
            var step = motion.Steps.Single(s => day.Planned.Stations[s.Step]?.Id == store.Id);
            Assert.Equal(store.Items, step.At(motion.End).InPlaces);
        }

        Assert.All(
            motion.Steps.Where(s => day.Paced.Line.Steps[s.Step].Places != LineStep.Unlimited),
            s => Assert.Equal((0, 0), s.At(motion.End)));
    }

    [Fact]
    public void A_still_picture_shows_the_moment()
    {
        var facts = Facts("poultry-40ft");
        var motion = DayMotion.Of(facts)!;
        long at = Hour + (40 * Ticks.Minute);
        var still = StillDay.Draw(facts, motion, at);
        Assert.Equal("1:40", Read(still, "clock"));
        Assert.Equal(FormattableString.Invariant($"{motion.Outs.Count(o => o <= at)}"), Read(still, "out"));
        var chill = motion.Steps.Single(s => facts.Day.Planned.Stations[s.Step]?.Id == "chill");
        Assert.Equal(FormattableString.Invariant($"{chill.At(at).InPlaces}"), Read(still, "count:chill"));
        Assert.Equal(5, still.Items.OfType<TextItem>().Count(t => motion.People.Any(p => p.Name == t.Group)));
    }

    [Fact]
    public void Names_from_a_plan_stay_text()
    {
        const string title = "<script>alert(1)</script> & ]]>";
        var facts = Of(DrawnPlans.Text("poultry-40ft").Replace("Quillsnap Hollow poultry unit", title, StringComparison.Ordinal));
        string picture = MovingDay.Write(facts, DayMotion.Of(facts)!, 0, Hour, 60);
        Assert.DoesNotContain("<script", picture, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("alert(1)", XDocument.Parse(picture).Root!.Elements().First().Value, StringComparison.Ordinal);
    }

    private static string Read(SheetScene scene, string group) => string.Concat(
        scene.Items.OfType<TextItem>().Where(t => t.Group == group).OrderBy(t => t.At.X).Select(t => t.Text));

    private static List<List<(double Share, double X, double Y)>> Movers(string picture, string what)
    {
        var all = XDocument.Parse(picture);
        string style = string.Concat(all.Descendants().Where(e => e.Name.LocalName == "style").Select(e => e.Value));
        var rules = Rule().Matches(style).ToDictionary(m => m.Groups["name"].Value, m => m.Groups["frames"].Value);
        return
        [
            .. all.Descendants().Select(e => e.Attribute("class")?.Value.Split(' ') ?? []).Where(c => c.Contains(what))
                .Select(c => Frame().Matches(rules[c[1]]).Select(m => (D(m, "share") / 100, D(m, "x"), D(m, "y"))).ToList()),
        ];

        static double D(Match match, string name) => double.Parse(match.Groups[name].Value, CultureInfo.InvariantCulture);
    }

    private static PaperPoint PlaceAt(List<(double Share, double X, double Y)> frames, double share)
    {
        int after = frames.FindIndex(f => f.Share > share);
        if (after < 0)
        {
            return new PaperPoint(frames[^1].X, frames[^1].Y);
        }

        var (from, to) = (frames[after - 1], frames[after]);
        double part = (share - from.Share) / (to.Share - from.Share);
        return new PaperPoint(from.X + ((to.X - from.X) * part), from.Y + ((to.Y - from.Y) * part));
    }

    private static PlanFacts Facts(string template) => Of(DrawnPlans.Text(template));

    private static PlanFacts Of(string text)
    {
        var plan = CheckedPlan.Plan(text);
        return new PlanFacts(plan, new FloorSpace(plan));
    }

    [GeneratedRegex(@"@keyframes (?<name>\w+)\{(?<frames>.*)\}\n")]
    private static partial Regex Rule();

    [GeneratedRegex(@"(?<share>[\d.]+)%\{transform:translate\((?<x>-?[\d.]+)px,(?<y>-?[\d.]+)px\)\}")]
    private static partial Regex Frame();
}
