using System.Globalization;
using System.Text;
using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Sheets;
using Floorplan.Tests.Drawing.Support;
using Xunit;

namespace Floorplan.Tests.Drawing.Sheets;

/// <summary>Sheets stay readable where a plan is empty, crowded or wordy.</summary>
public class HardPlansTests
{
    private const string EmptyShed = "plan \"Nothing yet\"\nshell shed 6000 x 4000 x 2600\n";

    [Fact]
    public void A_shell_alone_is_drawn_with_its_size() => AssertReadable(EmptyShed);

    [Fact]
    public void A_plan_without_flows_is_drawn()
        => AssertReadable(EmptyShed
            + "room a \"Room\" clean from west to east\nstation s \"Bench\" in a\n  size 1200 x 600 x 900\n  place against north wall, "
            + "centred\n");

    /// <summary>Found by fuzz case 27592.</summary>
    [Fact]
    public void A_station_without_a_name_is_drawn()
        => AssertReadable(EmptyShed
            + "room a \"\" clean from west to east\nstation s \"\" in a\n  size 1500 x 600 x 900\n  place against north wall, centred\n  "
            + "worker south\n");

    [Theory]
    [InlineData(10, 8)]
    [InlineData(25, 20)]
    [InlineData(60, 60)]
    public void A_crowded_plan_with_long_names_stays_readable(int stations, int letters)
    {
        var text =
            new StringBuilder(
                "plan \"Crowded\"\nshell shed 16000 x 8000 x 2600\nroom a \"A room with quite some things in it\" dirty from west to "
                    + "8000\nroom b \"Another\" clean from 8000 to east\npartitions thickness 100\ndoor d1 a to outside, west wall, "
                    + "centred, 1200 x 2100, swings out\ndoor d2 a to b, centred, 1000 x 2100, swings b\n");
        for (int i = 0; i < stations; i++)
        {
            string room = i % 2 == 0 ? "a" : "b";
            int place = i / 2;
            text.Append(
                CultureInfo.InvariantCulture,
                $"station s{i} \"{new string('m', letters)}\" in {room}\n  size 700 x 450 x 900\n  place at {600 + (place % 6 * 1150)}, "
                    + $"{500 + (place / 6 * 1400)}\n  worker south\n");
        }

        text.Append("flow product\n  outside -> d1 -> s0");
        for (int i = 1; i < Math.Min(stations, 12); i++)
        {
            text.Append(CultureInfo.InvariantCulture, $" -> {(i % 2 == 1 ? "d2 -> " : "d2 -> ")}s{i}");
        }

        AssertReadable(text.Append('\n').ToString());
    }

    [Fact]
    public void A_very_long_list_goes_on_over_pages_and_nothing_is_lost()
    {
        var text = new StringBuilder("plan \"Long list\"\nshell shed 40000 x 20000 x 2600\nroom a \"Hall\" dirty from west to east\n");
        for (int i = 0; i < 900; i++)
        {
            text.Append(
                CultureInfo.InvariantCulture,
                $"station s{i} \"Bench number {i}\" in a\n  size 500 x 400 x 900\n  place at {500 + (i % 45 * 850)}, "
                    + $"{500 + (i / 45 * 900)}\n");
        }

        var pages = SheetSet.Draw(DrawnPlans.Request(text.ToString()), [1]);
        string words = PrintedText.Solid(string.Concat(pages.Texts().Where(t => t.Layer == Layers.Schedule).Select(t => t.Text)));

        Assert.All(Enumerable.Range(1, 900), i => Assert.Contains($"{i}Benchnumber{i - 1}", words));
        Assert.Contains(pages.Texts(), t => t.Text == "Caution");
        Assert.All(pages, p => Assert.InRange(p.Denominator, 1, 100));
        Assert.All(pages, p => Assert.Empty(SceneAudit.Faults(p)));
    }

    private static void AssertReadable(string plan)
    {
        var sheets = SheetSet.Draw(DrawnPlans.Request(plan));
        Assert.Equal(SheetSet.All.Select(s => s.Number), sheets.Select(s => s.Sheet).Distinct());
        foreach (var sheet in sheets)
        {
            var faults = SceneAudit.Faults(sheet);
            Assert.True(faults.Count == 0, sheet.Name + ":\n" + string.Join("\n", faults));
        }
    }
}
