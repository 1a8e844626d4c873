using Floorplan.Tests.Drawing.Support;
using Xunit;

namespace Floorplan.Tests.Drawing.Sheets;

/// <summary>Sheet 5 says at each outlet which circuit it is on, and lists what hangs on each.</summary>
public sealed class CircuitTests
{
    private const string Plan = """
        plan "Circuits"
          units metric
        shell container 20 ft high-cube
        room cut "Cutting" clean from west to east
        door d1 cut to outside, south wall, 700 from west, 900 x 2050, swings out
        station saw "Band saw" in cut
          size    800 x 600 x 1600
          place   against north wall, 2500 from west
          needs   power 400 V 1.5 kW, circuit 10
        outlet x1 in cut, north wall, 1500 from west, height 1100, 16 A 230 V, gfci, circuit 2
        outlet x2 in cut, north wall, 4500 from west, height 1100, 16 A 230 V, gfci, circuit 2
        """;

    [Fact]
    public void Each_circuit_has_a_row_in_the_order_of_the_numbers()
    {
        string[] texts = [.. DrawnPlans.Draw(Plan, [5]).Texts().Select(t => t.Text)];

        int two = Array.IndexOf(texts, "x1, x2");
        Assert.Equal(["2", "x1, x2", "0.36 kVA"], texts[(two - 1)..(two + 2)]);
        int ten = Array.IndexOf(texts, "10", two);
        Assert.Equal(["10", "1 Band", "saw", "1.5 kVA"], texts[ten..(ten + 4)]);
        Assert.Equal(2, texts.Count(t => t == "circuit 2"));
    }

    [Fact]
    public void Circuits_that_a_plan_does_not_name_are_proposed()
    {
        string plan = Plan.Replace(", circuit 10", "", StringComparison.Ordinal).Replace(", circuit 2", "", StringComparison.Ordinal);
        string[] texts = [.. DrawnPlans.Draw(plan, [5]).Texts().Select(t => t.Text)];
        Assert.Contains("Circuits, with breaker and copper", texts);
        Assert.Contains(texts, t => t.Contains("proposed", StringComparison.Ordinal));
        Assert.DoesNotContain("circuit 2", texts);
    }
}
