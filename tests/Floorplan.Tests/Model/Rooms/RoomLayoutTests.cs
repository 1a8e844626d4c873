using CsCheck;
using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax;
using Floorplan.Language.Syntax.Values;
using Floorplan.Language.Text;
using Floorplan.Model.Binding;
using Floorplan.Model.Binding.Names;
using Floorplan.Model.Binding.Rooms;
using Floorplan.Model.Shapes;
using Xunit;

namespace Floorplan.Tests.Model.Rooms;

public class RoomLayoutTests
{
    private static readonly SourceSpan Nowhere = new(new SourceText("", "test.unit"), 0, 0);
    private static readonly Region Shell = Region.Of(new Box(Mm(0), Mm(0), Mm(12000), Mm(2200)));

    [Fact]
    public void Slice_bounds_are_the_centre_lines_of_partitions()
    {
        var rooms = Lay(Shell, Slice("a", null, 3600), Slice("b", 3600, null));
        Assert.Equal(new Box(Mm(0), Mm(0), Mm(3560), Mm(2200)), rooms[0].Floor.Bounds);
        Assert.Equal(new Box(Mm(3640), Mm(0), Mm(12000), Mm(2200)), rooms[1].Floor.Bounds);
        var partition = Assert.Single(PartitionLayout.Of(rooms, Shell, Mm(80), Mm(2500)));
        Assert.Equal(("a", "b"), (partition.RoomA, partition.RoomB));
        Assert.Equal(80 * 2200, partition.Outline.Area, 6);
    }

    [Fact]
    public void A_room_in_a_corner_is_carved_out_with_its_own_walls()
    {
        var rooms = Lay(Shell, Slice("a", null, 3600), Slice("b", 3600, null), InCorner("lobby", "b", Side.North, Side.West));
        Assert.Equal(new Box(Mm(3640), Mm(1100), Mm(4940), Mm(2200)), rooms[2].Floor.Bounds);
        Assert.Equal("b", rooms[2].CarvedFrom);
        Assert.Equal((8360 * 2200) - (1380 * 1180), rooms[1].Floor.AreaSquareMillimetres);
        var partitions = PartitionLayout.Of(rooms, Shell, Mm(80), Mm(2500));
        Assert.Equal(["a b", "a lobby", "b lobby"], partitions.Select(p => string.Join(' ', new[] { p.RoomA, p.RoomB }.Order())).Order());
        double floors = rooms.Sum(r => r.Floor.AreaSquareMillimetres);
        Assert.Equal(Shell.AreaSquareMillimetres, floors + partitions.Sum(p => p.Outline.Area), 3);
    }

    [Fact]
    public void A_slice_of_an_L_shaped_shell_is_cut_to_it()
    {
        var shell = Shell.Less(new Box(Mm(5000), Mm(1000), Mm(12000), Mm(2200)));
        var rooms = Lay(shell, Slice("a", null, 6000), Slice("b", 6000, null));
        Assert.Equal((5000 * 2200) + (960 * 1000), rooms[0].Floor.AreaSquareMillimetres);
        Assert.Equal(1000, rooms[1].Floor.Bounds.Depth.Millimetres);
    }

    [Fact]
    public void Rooms_and_partitions_fill_the_shell_without_overlap()
        => (from cuts in Gen.Int[500, 11500].Array[0, 5]
            from thickness in Gen.Int[1, 120]
            select (cuts, thickness)).Sample(t =>
        {
            int[] bounds = [.. t.cuts.Order().Where((c, i) => i == 0 || c - t.cuts.Order().ElementAt(i - 1) > 150)];
            int?[] all = [null, .. bounds, null];
            var drafts = Enumerable.Range(0, all.Length - 1).Select(i => Slice($"r{i}", all[i], all[i + 1])).ToArray();
            var reports = new Reports(UnitSystem.Metric);
            var rooms = new RoomLayout(Shell, Mm(t.thickness), Names(reports, "a", "b"), reports).Lay(drafts);
            if (reports.All.Count > 0)
            {
                return;
            }

            double walls = PartitionLayout.Of(rooms, Shell, Mm(t.thickness), Mm(2500)).Sum(p => p.Outline.Area);
            Assert.Equal(Shell.AreaSquareMillimetres, rooms.Sum(r => r.Floor.AreaSquareMillimetres) + walls, 2);
        });

    [Theory]
    [InlineData(3600, 3500, "rooms `a` and `b` overlap")]
    [InlineData(3600, 12500, "room `b` lies beyond the shell, which is 12000 mm x 2200 mm between finished faces")]
    [InlineData(3600, 4500, "floor from 3640 mm to 4460 mm from the west end belongs to no room")]
    [InlineData(-20, 0, "room `a` ends where it starts or before")]
    public void Rooms_that_do_not_meet_are_reported(int firstEnds, int secondStarts, string message)
    {
        var reports = new Reports(UnitSystem.Metric);
        var layout = new RoomLayout(Shell, Mm(80), Names(reports, "a", "b"), reports);
        layout.Lay([Slice("a", null, firstEnds), Slice("b", secondStarts, null)]);
        layout.ReportGap([]);
        Assert.Contains(reports.All, d => d.Message == message);
    }

    [Fact]
    public void A_room_beyond_the_shell_is_reported_with_the_size_of_the_shell()
    {
        var reports = new Reports(UnitSystem.Metric);
        new RoomLayout(Shell, Mm(80), Names(reports, "a", "b"), reports).Lay([Slice("a", null, 12500)]);
        var report = Assert.Single(reports.All);
        Assert.Equal("room `a` reaches beyond the shell, which is 12000 mm x 2200 mm between finished faces", report.Message);
        Assert.Equal("end it at a smaller distance, or write `to east`", report.Help);
    }

    [Fact]
    public void A_carved_room_that_does_not_fit_is_reported()
    {
        var reports = new Reports(UnitSystem.Metric);
        var area =
            new RoomArea(Mm(1300), Mm(2500), new NameSyntax("a", Nowhere), [new CornerTerm(Side.North, Side.West, Nowhere)], Nowhere);
        new RoomLayout(Shell, Mm(80), Names(reports, "a", "b"), reports)
            .Lay([Slice("a", null, null), new RoomDraft("b", Nowhere) { Area = area }]);
        Assert.Equal("room `b` is 1300 mm x 2500 mm and does not fit in room `a` there", Assert.Single(reports.All).Message);
    }

    [Fact]
    public void Rooms_carved_from_each_other_are_reported()
    {
        var reports = new Reports(UnitSystem.Metric);
        new RoomLayout(Shell, Mm(80), Names(reports, "a", "b"), reports)
            .Lay([InCorner("a", "b", Side.North, Side.West), InCorner("b", "a", Side.North, Side.West)]);
        Assert.Equal(2, reports.All.Count(d => d.Code == "room-in-no-room"));
    }

    private static IReadOnlyList<LaidRoom> Lay(Region shell, params RoomDraft[] drafts)
    {
        var reports = new Reports(UnitSystem.Metric);
        var rooms = new RoomLayout(shell, Mm(80), Names(reports, "a", "b"), reports).Lay(drafts);
        Assert.Empty(reports.All);
        return rooms;
    }

    private static NameTable Names(Reports reports, params string[] rooms)
    {
        var names = new NameTable(reports);
        foreach (string room in rooms)
        {
            names.Add(room, "room", Nowhere);
        }

        return names;
    }

    private static RoomDraft Slice(string id, int? from, int? to) => new(id, Nowhere)
    {
        Slice = new Slice(from is { } f ? Mm(f) : null, to is { } t ? Mm(t) : null, null, null, Nowhere),
    };

    private static RoomDraft InCorner(string id, string parent, Side northOrSouth, Side eastOrWest) => new(id, Nowhere)
    {
        Area = new RoomArea(
            Mm(1300), Mm(1100), new NameSyntax(parent, Nowhere), [new CornerTerm(northOrSouth, eastOrWest, Nowhere)], Nowhere),
    };

    private static Length Mm(double mm) => Length.FromMillimetres(mm);
}
