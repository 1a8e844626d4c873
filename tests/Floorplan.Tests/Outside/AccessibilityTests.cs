using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Floorplan.Tests.Cli;
using Microsoft.Playwright;
using Xunit;

namespace Floorplan.Tests.Outside;

/// <summary>The index page and the sheets, judged by the axe engine (rules of WCAG 2 and its own best practice) in Chromium.</summary>
public class AccessibilityTests
{
    private static readonly string[] Flags =
    [
        "--headless", "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking",
        "--disable-component-update", "--disable-sync",
    ];

    [SkippableFact]
    public async Task Index_page_and_sheets_have_no_fault_for_people_who_cannot_see_them()
    {
        string chromium = OutsidePrograms.Find("chromium", "google-chrome");
        using var folder = new TemporaryFolder();
        CliRun.In(folder.Path, "", "new", "poultry-40ft", "a.unit");
        CliRun.In(folder.Path, "", "new", "fish-20ft", "b.unit");
        CliRun.In(folder.Path, "", "draw", "a.unit", "--format", "svg,pdf,png,dxf", "--dpi", "50", "--out", "one");
        CliRun.In(folder.Path, "", "draw", "a.unit", "b.unit", "--out", "two");
        using var playwright = await Playwright.CreateAsync();
        await using var browser =
            await playwright.Chromium.LaunchAsync(new BrowserTypeLaunchOptions { ExecutablePath = chromium, Args = Flags });
        var page = await browser.NewPageAsync();

        foreach (string index in new[] { "one/index.html", "two/index.html" })
        {
            await page.GotoAsync(new Uri(folder.At(index)).AbsoluteUri);
            AssertFaultless(index, await page.RunAxe());
            Assert.True(
                await page.EvaluateAsync<bool>("[...document.images].every(i => i.complete && i.naturalWidth > 0)"),
                "a picture is not shown");
        }

        foreach (
            string sheet in folder.Files.Where(f => f.StartsWith("one/", StringComparison.Ordinal)
                && f.EndsWith(".svg", StringComparison.Ordinal)))
        {
            await page.SetContentAsync(
                "<!DOCTYPE html><html lang=\"en\"><head><title>Sheet</title></head>"
                    + $"<body><main><h1>Sheet</h1>{File.ReadAllText(folder.At(sheet))}</main></body></html>");
            AssertFaultless(sheet, await page.RunAxe());
            Assert.NotEqual(0, await page.Locator("svg[role=img] > title").CountAsync());
        }
    }

    /// <summary>The engine sees what it is there to see.</summary>
    [SkippableFact]
    public async Task A_picture_without_words_is_found()
    {
        string chromium = OutsidePrograms.Find("chromium", "google-chrome");
        using var playwright = await Playwright.CreateAsync();
        await using var browser =
            await playwright.Chromium.LaunchAsync(new BrowserTypeLaunchOptions { ExecutablePath = chromium, Args = Flags });
        var page = await browser.NewPageAsync();
        await page.SetContentAsync(
            "<!DOCTYPE html><html><body><svg role=\"img\" width=\"9\" height=\"9\"></svg><p style=\"color:#aaa\">pale</p></body></html>");
        var found = (await page.RunAxe()).Violations.Select(v => v.Id).ToHashSet();
        Assert.Superset(new HashSet<string> { "svg-img-alt", "html-has-lang", "color-contrast" }, found);
    }

    private static void AssertFaultless(string what, AxeResult result)
    {
        Assert.NotEmpty(result.Passes);
        Assert.True(
            result.Violations.Length == 0,
            $"{what}: {string.Join("; ", result.Violations.Select(v => $"{v.Id}: {v.Help} ({v.Nodes[0].Html})"))}");
    }
}
