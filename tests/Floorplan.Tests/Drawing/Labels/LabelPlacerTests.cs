using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Labels;
using Floorplan.Drawing.Lettering;
using Floorplan.Drawing.Scene;
using Xunit;

namespace Floorplan.Tests.Drawing.Labels;

public class LabelPlacerTests
{
    private static readonly PaperBox Paper = new(0, 0, 200, 140);

    [Fact]
    public void A_label_with_room_stands_where_it_is_wanted_first()
    {
        var placed = Place([Request("bench", PaperBox.Around(new(100, 70), 60, 30))]);

        Assert.Equal(LabelOutcome.AtTarget, placed.Single().Outcome);
        Assert.Equal(new PaperPoint(100, 70), placed.Single().Box!.Value.Centre);
    }

    [Fact]
    public void A_label_that_does_not_fit_is_led_out_with_a_line_to_its_target()
    {
        var scene = new SceneBuilder();
        scene.Fill(PaperBox.Around(new(100, 70), 30, 30), Palette.Wall, Layers.Wall);
        var placed = Place([Request("bench", PaperBox.Around(new(100, 70), 2, 2))], scene);

        Assert.Equal(LabelOutcome.WithLeader, placed.Single().Outcome);
        var leader = Assert.Single(scene.Items.OfType<LineItem>(), l => l.Layer == Layers.Leader);
        Assert.Equal(new PaperPoint(100, 70), leader.To);
    }

    [Fact]
    public void A_text_that_finds_no_room_gets_a_number_for_the_key()
    {
        var labels = Enumerable.Range(0, 60)
            .Select(i => Request(
                new string('W', 40), PaperBox.Around(new(5 + (i % 20 * 10), 20 + (i / 20 * 40)), 1, 1)) with
            { Id = $"{i}" });
        var placed = Place([.. labels]);

        var keyed = placed.Where(p => p.Outcome == LabelOutcome.Keyed).ToList();
        Assert.NotEmpty(keyed);
        Assert.Equal(keyed.Select((_, i) => $"k{i + 1}"), keyed.Select(p => p.KeyNumber));
    }

    /// <summary>A long name of a small room between other rooms: its number needs little floor.</summary>
    [Fact]
    public void The_number_of_a_text_that_fits_nowhere_stands_on_its_own_floor()
    {
        var floor = PaperBox.Around(new(100, 70), 20, 15);
        var placed = Place(
            [
                Request(new string('W', 300), floor) with { Positions = [], KeyTarget = floor, NotOver = Paper, KeyMark = "wash" },
            ]);

        Assert.Equal(LabelOutcome.Keyed, placed.Single().Outcome);
        Assert.True(floor.Holds(placed.Single().Box!.Value));
    }

    /// <summary>As beside a plan with rows of dimensions on all sides.</summary>
    [Fact]
    public void A_name_is_not_led_to_where_lines_strike_through_it()
    {
        var floor = PaperBox.Around(new(100, 70), 20, 15);
        var scene = new SceneBuilder();
        for (double x = 0; x <= Paper.Width; x += 8)
        {
            scene.Line(new(x, 0), new(x, 60), new Pen(0.18), Layers.Dimensions);
            scene.Line(new(x, 80), new(x, Paper.Height), new Pen(0.18), Layers.Dimensions);
        }

        var name = Request("Change and wash", floor) with { Positions = [], NotOver = floor with { Left = 0, Right = Paper.Width } };
        Assert.Equal(LabelOutcome.WithLeader, Place([name], scene).Single().Outcome);
        Assert.Equal(LabelOutcome.Keyed, Place([name with { KeyTarget = floor }], scene).Single().Outcome);
    }

    /// <summary>A sink beside a bin: its number would be read as the bin's.</summary>
    [Fact]
    public void A_number_does_not_stand_in_another_thing()
    {
        var bin = PaperBox.Around(new(110, 70), 10, 30);
        var sink = Request("4", PaperBox.Around(new(103, 70), 4, 4)) with { Positions = [LabelPosition.Right, LabelPosition.Above] };
        LabelArea[] things = [Area("bin", LabelAreaKind.Thing, bin)];

        Assert.True(Place([sink], things: things).Single().Box!.Value.Overlaps(bin));
        Assert.False(Place([sink with { OffOthers = true }], things: things).Single().Box!.Value.Overlaps(bin));
    }

    /// <summary>The room of the target is full; the one beside it is empty.</summary>
    [Fact]
    public void A_text_does_not_stand_in_another_room()
    {
        var full = new PaperBox(0, 0, 100, Paper.Height);
        var empty = new PaperBox(100, 0, Paper.Width, Paper.Height);
        var scene = new SceneBuilder();
        scene.Fill(full with { Bottom = 120 }, Palette.Wall, Layers.Wall);
        var level = Request("-40", PaperBox.Around(new(98, 70), 1, 1)) with { Positions = [LabelPosition.Right] };

        Assert.True(empty.Overlaps(Place([level], scene).Single().Box!.Value));
        var placed = Place(
            [level], scene, [Area("full", LabelAreaKind.Room, full), Area("empty", LabelAreaKind.Room, empty)]).Single();
        Assert.False(empty.Overlaps(placed.Box!.Value));
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    [InlineData(5)]
    public void No_two_labels_overlap_and_none_is_cut_by_a_heavy_line(int seed)
    {
        var random = new Random(seed);
        PaperPoint Point() => new(random.NextDouble() * Paper.Width, random.NextDouble() * Paper.Height);
        var scene = new SceneBuilder();
        List<(PaperPoint From, PaperPoint To)> walls = [.. Enumerable.Range(0, 12).Select(_ => (Point(), Point()))];
        foreach (var (from, to) in walls)
        {
            scene.Line(from, to, new Pen(0.5), Layers.Wall);
        }

        var tags = Enum.GetValues<TagShape>();
        var requests = Enumerable.Range(0, 80)
            .Select(i => Request(new string('n', random.Next(1, 20)), PaperBox.Around(Point(), random.Next(1, 30), random.Next(1, 15))) with
            {
                Id = $"{i}",
                Tag = tags[random.Next(tags.Length)],
                Priority = random.Next(5),
                MayTurn = random.Next(2) == 0,
            });
        var boxes = Place([.. requests], scene).Where(p => p.Box is not null).Select(p => p.Box!.Value).ToList();

        Assert.True(boxes.Count > 40, $"only {boxes.Count} labels were placed");
        Assert.All(boxes, b => Assert.True(Paper.Holds(b)));
        Assert.All(boxes, b => Assert.DoesNotContain(walls, w => b.IsCutBy(w.From, w.To)));
        for (int i = 0; i < boxes.Count; i++)
        {
            Assert.DoesNotContain(boxes.Skip(i + 1), other => other.Overlaps(boxes[i]));
        }

        // Measured from the texts that were drawn, not from what the placer says.
        var texts = scene.Items.OfType<TextItem>().Select(TextMeasure.Box).ToList();
        for (int i = 0; i < texts.Count; i++)
        {
            Assert.DoesNotContain(texts.Skip(i + 1), other => other.Overlaps(texts[i].Grown(-0.05)));
        }
    }

    private static LabelArea Area(string group, LabelAreaKind kind, PaperBox box)
        => new(group, kind, [[new(box.Left, box.Top), new(box.Right, box.Top), new(box.Right, box.Bottom), new(box.Left, box.Bottom)]]);

    private static IReadOnlyList<LabelResult> Place(
        IReadOnlyList<LabelRequest> requests, SceneBuilder? scene = null, IReadOnlyList<LabelArea>? things = null)
    {
        var placer = new LabelPlacer(scene ?? new SceneBuilder());
        foreach (var area in things ?? [])
        {
            placer.Add(area);
        }

        foreach (var request in requests)
        {
            placer.Add(request);
        }

        return placer.Place(Paper);
    }

    private static LabelRequest Request(string text, PaperBox target) => new()
    {
        Id = text,
        Lines = [text],
        Target = target,
        Positions = [LabelPosition.Inside, LabelPosition.Right, LabelPosition.Above],
    };
}
