using CsCheck;
using Floorplan.Language.Diagnostics;
using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax;
using Floorplan.Language.Syntax.Values;
using Floorplan.Language.Text;
using Floorplan.Model.Binding;
using Floorplan.Model.Binding.Names;
using Floorplan.Model.Binding.Placing;
using Floorplan.Model.Binding.Rooms;
using Floorplan.Model.Shapes;
using Xunit;

namespace Floorplan.Tests.Model.Binding.Placing;

public class SolverTests
{
    private static readonly SourceText Source = new("", "test.unit");
    private static readonly SourceSpan Nowhere = new(Source, 0, 0);

    [Fact]
    public void A_row_of_ten_thousand_things_each_east_of_the_last_is_exact()
    {
        const int Count = 10_000;
        var gap = Length.FromInches(1.0 / 64);
        var things = Enumerable.Range(0, Count).Reverse().Select(i => Thing(
            $"t{i}",
            Length.FromInches(3),
            i == 0 ? new FromTerm(Of(0), West, Nowhere) : new BesideTerm(East, Named($"t{i - 1}"), new LengthSyntax(gap, Nowhere), Nowhere),
            new AgainstTerm(new SideSyntax(Side.South, Nowhere), Nowhere))).ToList();
        Assert.Empty(Solve(things));
        var last = things.Single(t => t.Id == $"t{Count - 1}");
        Assert.Equal((Count - 1) * (3 * 64L + 1) * 396_875, last.X!.Value.Nanometres);
    }

    [Fact]
    public void A_circle_of_thousands_is_one_report()
    {
        const int Count = 5_000;
        var things = Enumerable.Range(0, Count).Select(i => Thing(
            $"t{i}", Length.FromInches(3), new BesideTerm(East, Named($"t{(i + 1) % Count}"), null, Nowhere),
            new AgainstTerm(new SideSyntax(Side.South, Nowhere), Nowhere))).ToList();
        var report = Assert.Single(Solve(things));
        Assert.Equal("place-circle", report.Code);
        Assert.True(report.Message.Length < 300);
    }

    [Fact]
    public void The_order_of_the_file_does_not_matter()
        => Gen.Shuffle(Enumerable.Range(0, 8).ToArray()).Sample(order =>
        {
            var made = Enumerable.Range(0, 8).Select(i => Thing(
                $"t{i}",
                Length.FromMillimetres(100 + i),
                i == 0 ? new FromTerm(Of(7), West, Nowhere) : new InLineTerm(Named($"t{i - 1}"), Nowhere),
                new AgainstTerm(new SideSyntax(Side.North, Nowhere), Nowhere))).ToList();
            Assert.Empty(Solve([.. order.Select(i => made[i])]));
            Assert.All(made, t => Assert.Equal(57, (t.X!.Value + (t.Width / 2)).Millimetres, 6));
        });

    private static SideSyntax East { get; } = new(Side.East, Nowhere);

    private static SideSyntax West { get; } = new(Side.West, Nowhere);

    private static NameSyntax Named(string name) => new(name, Nowhere);

    private static LengthSyntax Of(double mm) => new(Length.FromMillimetres(mm), Nowhere);

    private static IReadOnlyList<Diagnostic> Solve(IReadOnlyList<Placeable> things)
    {
        var reports = new Reports(UnitSystem.Metric);
        var names = new NameTable(reports);
        foreach (var thing in things)
        {
            names.Add(thing.Id, "station", Nowhere)!.Placeable = thing;
        }

        var axes = new AxisChoice(names, reports);
        foreach (var thing in things)
        {
            axes.Choose(thing);
        }

        new Solver(names, Length.Zero, reports).Solve(things);
        return reports.All;
    }

    private static Placeable Thing(string id, Length width, params PlaceTerm[] place) => new()
    {
        Id = id,
        Room = new LaidRoom(
            new RoomDraft("room", Nowhere),
            Region.Of(new Box(Length.Zero, Length.Zero, Length.FromMillimetres(900_000), Length.FromMillimetres(3000))),
            null),
        Width = width,
        Depth = Length.FromMillimetres(600),
        Place = place,
        Span = Nowhere,
    };
}
