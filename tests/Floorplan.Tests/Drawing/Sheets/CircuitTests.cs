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
        Assert.Equal(["2", "x1, x2", "16 A 230 V"], texts[(two - 1)..(two + 2)]);
        int ten = Array.IndexOf(texts, "10", two);
        Assert.Equal(["10", "1 Band saw", "1.5 kW"], texts[ten..(ten + 3)]);
        Assert.Equal(2, texts.Count(t => t == "circuit 2"));
    }

    [Fact]
    public void A_plan_that_names_no_circuits_has_no_list_of_them() => Assert.DoesNotContain(
        DrawnPlans.Draw(
            Plan.Replace(", circuit 10", "", StringComparison.Ordinal).Replace(", circuit 2", "", StringComparison.Ordinal), [5])
            .Texts(),
        t => t.Text.StartsWith("Circuits, as", StringComparison.Ordinal));
}
