using System.Text;
using System.Text.Json;
using Floorplan.Benchmarks;
using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Cli.Output.Json;
using Floorplan.Drawing.Schedules;
using Floorplan.Drawing.Sheets;
using Floorplan.Sizing.Working;
using Floorplan.Tests.Architecture;
using Floorplan.Tests.Checks.Support;
using Floorplan.Tests.Drawing.Support;
using Xunit;

namespace Floorplan.Tests.Sizing.Working;

/// <summary>
/// A figure that two of finding, sheet, schedule, CSV and JSON show is the same object, so that no two of them can disagree. A new
/// calculation is looked at here as soon as its cells, labels and findings carry its figures.
/// </summary>
public class SameFigureTests
{
    private const int Parts = 20;

    /// <summary>As for the sheets of invented plans.</summary>
    private static readonly int Step = Thoroughness.Whole ? 1 : 21;

    public static TheoryData<string> Templates => [.. DrawnPlans.Templates];

    public static TheoryData<int> Numbers => [.. Enumerable.Range(0, Parts)];

    [Theory, MemberData(nameof(Templates))]
    public void Two_places_of_a_template_show_the_same_object(string template)
    {
        var shown = Shown(File.ReadAllText(Repository.At("templates", template + ".unit")));
        int twice = shown.Count(places => places.Count(p => !p.StartsWith("JSON", StringComparison.Ordinal)) > 1);
        Assert.True(twice >= LeastOfTemplate
            || template == "empty-start", $"only {twice} figures are shown in two places: cells or labels no longer carry theirs");
    }

    /// <summary>
    /// Findings share figures with sheets where there are faults, which templates have few of: so the rules' own bad examples are
    /// looked at.
    /// </summary>
    [Fact]
    public void Findings_of_bad_examples_share_figures_with_sheets()
    {
        int shared = RuleCatalogue.All.Where(r => CheckedPlan.Check(r.Bad, r.Name).Any(f => f.Figures.Count > 0))
            .SelectMany(r => Shown(r.Bad))
            .Count(places => places.Any(p => p.StartsWith("finding", StringComparison.Ordinal))
                && places.Any(p => p.StartsWith("sheet", StringComparison.Ordinal)));
        Assert.True(
            shared >= LeastShared,
            $"only {shared} figures are in a finding and on a sheet: cells, labels or findings no longer carry theirs");
    }

    /// <summary>
    /// Uses of cold and hot water, drains and power, and the sums of two of them. Goes up with each calculation that joins.
    /// </summary>
    private const int LeastOfTemplate = 5;

    /// <summary>Light, three of air, a level of a floor. Goes up with each calculation that joins.</summary>
    private const int LeastShared = 5;

    [Theory, MemberData(nameof(Numbers))]
    public void Two_places_of_an_invented_plan_show_the_same_object(int part)
    {
        foreach (int number in Enumerable.Range(0, InventedPlans.Count).Where(n => n % Step == 0 && n / Step % Parts == part))
        {
            Shown(InventedPlans.Make(number));
        }
    }

    /// <summary>Checks one plan; returns the places that show each figure.</summary>
    private static IReadOnlyList<IReadOnlyList<string>> Shown(string text)
    {
        var request = DrawnPlans.Request(text);
        var shown = Places(request).SelectMany(p => p.Figures.Select(f => (p.Place, Figure: f))).ToList();
        var byName = shown.GroupBy(s => (s.Figure.Name, s.Figure.Of)).ToList();
        Assert.All(byName, g => Assert.True(
            g.All(s => ReferenceEquals(s.Figure, g.First().Figure)),
            $"{g.Key.Name} of {g.Key.Of}: {string.Join("; ", g.Select(s => $"{s.Place} {s.Figure.Text}").Distinct())}"));
        return [.. byName.Select(g => (IReadOnlyList<string>)[.. g.Select(s => s.Place).Distinct()])];
    }

    private static IEnumerable<(string Place, IEnumerable<Figure> Figures)> Places(SheetRequest request)
    {
        foreach (var finding in request.Findings)
        {
            yield return ("finding " + finding.Rule, finding.Figures);
            yield return ("JSON " + finding.Rule, finding.Figures.Where(f => IsInJson(finding, f)));
        }

        foreach (var sheet in SheetSet.Draw(request))
        {
            yield return ("sheet " + sheet.Name, sheet.Figures);
        }

        foreach (var schedule in Schedule.All(request.Facts))
        {
            string csv = Encoding.UTF8.GetString(CsvSchedule.Write(schedule));
            yield return ("schedule " + schedule.Name, schedule.Figures);
            yield return ("CSV " + schedule.Name, schedule.Figures.Where(f => csv.Contains(f.Text, StringComparison.Ordinal)));
        }
    }

    /// <summary>JSON is text: a figure is there when one entry has its name, thing, printed text and value.</summary>
    private static bool IsInJson(Finding finding, Figure figure)
    {
        using var held = new MemoryStream();
        using (var json = new Utf8JsonWriter(held))
        {
            FindingJson.Write(json, finding, 1);
        }

        using var document = JsonDocument.Parse(held.ToArray());
        return document.RootElement.GetProperty("figures").EnumerateArray().Count(e =>
            e.GetProperty("name").GetString() == figure.Name
                && e.GetProperty("of").GetString() == figure.Of
                && e.GetProperty("text").GetString() == figure.Text
            && (e.GetProperty("value").ValueKind == JsonValueKind.Null
                ? !double.IsFinite(figure.Value)
                : e.GetProperty("value").GetDouble() == figure.Value)) == 1;
    }
}
