using Floorplan.Language.Diagnostics;
using Floorplan.Language.Syntax;
using Floorplan.Model.Binding.Files;
using Floorplan.Model.Stations;
using Xunit;

namespace Floorplan.Tests.Model.Binding;

public class UseTests
{
    public static TheoryData<string> Shelves => [.. PartsShelf.Names];

    [Fact]
    public void There_is_a_shelf_for_every_trade()
        => Assert.Equal(["parts/common", "parts/dairy", "parts/fish", "parts/game", "parts/poultry", "parts/vegetables"], PartsShelf.Names);

    [Theory]
    [MemberData(nameof(Shelves))]
    public void Every_part_of_every_shelf_can_be_placed(string shelf)
    {
        var tree = SyntaxTree.Parse(PartsShelf.Read(shelf).Source!);
        Assert.Empty(tree.Diagnostics.Select(d => d.Message));
        string[] kinds = [.. tree.Statements.Select(s => s.Name!.Text)];
        string stations = string.Concat(kinds.Select((k, i) => $"station s{i} like {k} in wet\n  place at {i * 5}, 0\n"));
        var plan = PlanTexts.Whole(PlanTexts.TwoRooms + $"kinds from {shelf}\n" + stations);
        Assert.Equal(kinds.Length, plan.Stations.Count);
        Assert.All(plan.Stations, s => Assert.NotEqual(s.Id, s.Label));
    }

    [Fact]
    public void A_part_reads_the_same_in_a_plan_in_feet()
    {
        var sink = Assert.Single(PlanTexts.Whole("""
            plan "Feet"
              units feet
            shell shed 20 ft x 10 ft x 8 ft
            room all "All" dry from west to east
            kinds from parts/common
            sink s1 like hand-sink hand in all
              place corner south-west
            """).Stations);
        Assert.Equal((450.0, 350.0), (sink.Bounds.Width.Millimetres, sink.Bounds.Depth.Millimetres));
        Assert.True(sink.IsHandSink);
    }

    [Fact]
    public void A_station_overrides_details_of_its_kind_and_a_kind_those_of_another()
    {
        var plan = PlanTexts.Whole(
            PlanTexts.TwoRooms
                + "kinds from benches\nstation s like long in wet\n  place corner south-west\n  workers 2 north, 700 apart\n",
            new Dictionary<string, string>
            {
                ["benches.unit"] = """
                    kind short "Bench"
                      size 1000 x 600 x 900
                      worker south
                      work 6 s each
                      needs cold 5 L/min, drain
                    kind long like short
                      size 2000 x 600 x 900
                    """,
            });
        var station = Assert.Single(plan.Stations);
        Assert.Equal(2000, station.Bounds.Width.Millimetres);
        Assert.Equal("Bench", station.Label);
        Assert.Equal([NeedKind.ColdWater, NeedKind.Drain], station.Needs.Select(n => n.Kind));
        Assert.Equal(2, station.Workers.Count);
        Assert.All(station.Workers, w => Assert.Equal(Side.North, w.Stands));
    }

    [Fact]
    public void A_circle_of_files_is_shown()
    {
        var mistake = PlanTexts.Mistake(
            PlanTexts.TwoRooms + "kinds from a\n",
            new Dictionary<string, string> { ["a.unit"] = "kinds from b\n", ["b.unit"] = "kinds from a\n" });
        Assert.Equal("`a.unit` reads kinds from itself: a.unit, b.unit, and back to `a.unit`", mistake.Message);
        Assert.Equal("b.unit", mistake.Span.Source.Path);
    }

    [Fact]
    public void The_same_file_may_be_used_from_two_sides()
        => Assert.Empty(PlanTexts.Whole(
            PlanTexts.TwoRooms + "kinds from a\nkinds from b\n",
            new Dictionary<string,
            string>
            { ["a.unit"] = "kinds from c\n", ["b.unit"] = "kinds from c\n", ["c.unit"] = "kind k\n  size 1 x 1 x 1\n" }).Stations);

    [Fact]
    public void Files_deeper_than_the_bound_are_refused()
    {
        var files = Enumerable.Range(0, 30).ToDictionary(i => $"f{i}.unit", i => $"kinds from f{i + 1}\n");
        Assert.Equal(
            "files read kinds from files more than 8 deep here", PlanTexts.Mistake(PlanTexts.TwoRooms + "kinds from f0\n", files).Message);
    }

    [Fact]
    public void More_files_than_the_bound_are_refused_once()
    {
        var files = Enumerable.Range(0, 80).ToDictionary(i => $"f{i}.unit", _ => "# nothing\n");
        string uses = string.Concat(Enumerable.Range(0, 80).Select(i => $"kinds from f{i}\n"));
        Assert.Equal("a plan reads kinds from at most 64 files", PlanTexts.Mistake(PlanTexts.TwoRooms + uses, files).Message);
    }

    [Theory]
    [InlineData("../kinds")]
    [InlineData("/etc/passwd")]
    public void A_file_outside_the_folder_tree_is_refused(string name)
        => Assert.Equal("kinds-not-read", PlanTexts.Mistake(PlanTexts.TwoRooms + $"kinds from \"{name}\"\n").Code);

    [Fact]
    public void Only_kinds_are_taken_from_a_used_file()
    {
        var mistake =
            PlanTexts.Mistake(PlanTexts.TwoRooms
                + "kinds from a\n", new Dictionary<string, string> { ["a.unit"] = "partitions thickness 80\n" });
        Assert.Equal(
            (Severity.Warning, "`partitions` in a file of kinds has no effect; only its kinds are taken"),
            (mistake.Severity, mistake.Message));
    }
}
