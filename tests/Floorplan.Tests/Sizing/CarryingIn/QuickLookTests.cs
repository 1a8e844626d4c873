using Floorplan.Benchmarks;
using Floorplan.Language.Diagnostics;
using Floorplan.Model;
using Floorplan.Sizing.CarryingIn;
using Floorplan.Tests.Architecture;
using Floorplan.Tests.Checks.Support;
using Floorplan.Tests.Robustness;
using Xunit;

namespace Floorplan.Tests.Sizing.CarryingIn;

/// <summary>
/// The search for poses is the judge of the quick look. The quick look wants the way free for a rectangle that is larger on every side by
/// all that the search may miss or cut in at its second step, so that the search must find that way too; where it finds none it says
/// nothing. So the order of bringing in, what is stuck and how each thing goes in are the same with it and without.
/// </summary>
public sealed class QuickLookTests
{
    private const int Slips = 300;
    private const int Packed = 300;
    private const int Parts = 8;

    public static TheoryData<int> Numbers => [.. Enumerable.Range(0, Parts)];

    [Theory, MemberData(nameof(Numbers))]
    public void Quick_looks_change_no_answer(int part)
    {
        foreach (var (name, text) in Thoroughness.Slice(Texts(), 14).Where((_, i) => i % Parts == part))
        {
            if (Plan(text) is { } plan)
            {
                Assert.Equal((name, Said(BringingIn.Of(plan, false))), (name, Said(BringingIn.Of(plan, true))));
            }
        }
    }

    /// <summary>Else the test above compares little.</summary>
    [Fact]
    public void Packed_units_have_things_that_block_each_other()
    {
        var orders = Enumerable.Range(0, 40).Select(n => BringingIn.Of(Plan(PackedUnits.Make(n))!));

        Assert.Contains(orders, o => o.Stuck.Count == 0 && o.Steps.Any(s => s.Ahead.Count > 0));
        Assert.Contains(orders, o => o.Stuck.Count > 0);
    }

    private static IEnumerable<(string Name, string Text)> Texts()
    {
        var files = new[] { "templates", "gallery" }
            .SelectMany(folder => Directory.EnumerateFiles(Repository.At(folder), "*.unit", SearchOption.AllDirectories))
            .Order(StringComparer.Ordinal).Select(f => (Name: f, Text: File.ReadAllText(f))).ToList();
        var invented = Enumerable.Range(0, InventedPlans.Count).Select(n => (Name: $"invented {n}", Text: InventedPlans.Make(n)));
        var slips = Enumerable.Range(0, Slips).Select(n => (n, files[n % files.Count]))
            .Select(p => (Name: $"slip {p.n} in {p.Item2.Name}", Text: FuzzSlips.Make(new Random(p.n), p.Item2.Text)));
        return [.. files, .. invented, .. slips, .. Enumerable.Range(0, Packed).Select(n => ($"packed {n}", PackedUnits.Make(n)))];
    }

    private static Plan? Plan(string text)
    {
        var bound = CheckedPlan.Bind(text);
        return bound.Diagnostics.Any(d => d.Severity == Severity.Error) ? null : bound.Plan;
    }

    private static string Said(BringingIn order) => string.Join(
        '\n',
        [
            .. order.Steps.Select(s => $"{s.Station.Id} after {string.Join(' ', s.Ahead.Select(a => a.Id))} wall {s.Wall?.Id}"),
            .. order.Stuck.Select(s => $"{s.Id} is stuck"),
            .. order.Entries.Select(e => $"{e.Station.Id} {e.GoesUpright} {e.GoesTipped} {e.Decisive?.Id} {e.LeftOpen?.Id}"),
        ]);
}
