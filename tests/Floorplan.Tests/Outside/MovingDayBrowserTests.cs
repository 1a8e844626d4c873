using Floorplan.Drawing.Moving;
using Floorplan.Model.Space;
using Floorplan.Sizing;
using Floorplan.Sizing.Simulation.Line;
using Floorplan.Sizing.Simulation.Motion;
using Floorplan.Tests.Checks.Support;
using Floorplan.Tests.Drawing.Support;
using Microsoft.Playwright;
using Xunit;

namespace Floorplan.Tests.Outside;

/// <summary>The picture of a day plays in Chromium, by itself.</summary>
public sealed class MovingDayBrowserTests
{
    private static readonly string[] Flags = ["--no-sandbox", "--disable-gpu"];

    /// <summary>Sets every animation to a time and reads where things are: people, loads and figures that turn.</summary>
    private const string PlacesAt = """
        at => {
          document.getAnimations().forEach(a => { a.pause(); a.currentTime = at; });
          return [...document.querySelectorAll('.m')].map(e => getComputedStyle(e).transform).join(';');
        }
        """;

    [SkippableFact]
    public async Task It_plays_and_stands_still_where_little_motion_is_wished()
    {
        string chromium = OutsidePrograms.Find("chromium", "google-chrome");
        var plan = CheckedPlan.Plan(DrawnPlans.Text("poultry-40ft"));
        var facts = new PlanFacts(plan, new FloorSpace(plan));
        string file = Path.Combine(Path.GetTempPath(), $"{Guid.NewGuid():N}.svg");
        await File.WriteAllTextAsync(file, MovingDay.Write(facts, DayMotion.Of(facts)!, Ticks.Hour, 2 * Ticks.Hour, 60));
        try
        {
            using var playwright = await Playwright.CreateAsync();
            await using var browser =
                await playwright.Chromium.LaunchAsync(new BrowserTypeLaunchOptions { ExecutablePath = chromium, Args = Flags });
            var page = await browser.NewPageAsync();
            await page.GotoAsync(new Uri(file).AbsoluteUri);

            // One second is one minute of the day: two minutes on, and at the same time once more.
            string first = await page.EvaluateAsync<string>(PlacesAt, 10_000);
            string later = await page.EvaluateAsync<string>(PlacesAt, 12_000);
            Assert.NotEqual(first, later);
            Assert.Equal(first, await page.EvaluateAsync<string>(PlacesAt, 10_000));
            Assert.DoesNotContain("none", first.Split(';'));

            var still = await browser.NewPageAsync(new BrowserNewPageOptions { ReducedMotion = ReducedMotion.Reduce });
            await still.GotoAsync(new Uri(file).AbsoluteUri);
            Assert.Equal(0, await still.EvaluateAsync<int>("() => document.getAnimations().length"));
        }
        finally
        {
            File.Delete(file);
        }
    }
}
