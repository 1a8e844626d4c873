using Deque.AxeCore.Playwright;
using Floorplan.Tests.Cli;
using Microsoft.Playwright;
using UglyToad.PdfPig;
using Xunit;

namespace Floorplan.Tests.Outside;

/// <summary>The index page as a telephone, a tablet, a desk and a printer show it, in Chromium.</summary>
public class IndexPageTests
{
    private static readonly string[] Flags =
    [
        "--headless", "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking",
        "--disable-component-update", "--disable-sync",
    ];

    private static readonly int[] Widths = [360, 768, 1280];

    /// <summary>Words, or runs of figures, that stand on two lines. A break after a hyphen is none.</summary>
    private const string TornWords = """
        () => {
          const torn = [];
          const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
          while (walker.nextNode()) {
            const node = walker.currentNode;
            for (const word of node.data.matchAll(/[\p{L}\p{N}]+/gu)) {
              const range = document.createRange();
              range.setStart(node, word.index);
              range.setEnd(node, word.index + word[0].length);
              if (new Set([...range.getClientRects()].map(r => Math.round(r.top))).size > 1) torn.push(word[0]);
            }
          }
          return torn;
        }
        """;

    private const string Overhang = "document.documentElement.scrollWidth - document.documentElement.clientWidth";

    [SkippableFact]
    public async Task It_fits_a_telephone_a_tablet_and_a_desk()
    {
        using var folder = Drawn();
        await InChromium(async page =>
        {
            foreach (string index in new[] { "one/index.html", "two/index.html" })
            {
                await page.GotoAsync(new Uri(folder.At(index)).AbsoluteUri);
                foreach (int width in Widths)
                {
                    await page.SetViewportSizeAsync(width, 800);
                    Assert.Equal(0, await page.EvaluateAsync<int>(Overhang));
                    Assert.Empty(await page.EvaluateAsync<string[]>(TornWords));
                    var result = await page.RunAxe();
                    Assert.NotEmpty(result.Passes);
                    Assert.True(
                        result.Violations.Length == 0,
                        $"{index} at {width}: {string.Join("; ", result.Violations.Select(v => $"{v.Id}: {v.Nodes[0].Html}"))}");
                }
            }
        });
    }

    /// <summary>The plan is the first thing after the title, and leads to itself in full size; findings come before files.</summary>
    [SkippableFact]
    public async Task The_plan_comes_first_and_opens_on_a_tap()
    {
        using var folder = Drawn();
        await InChromium(async page =>
        {
            await page.GotoAsync(new Uri(folder.At("one/index.html")).AbsoluteUri);
            await page.SetViewportSizeAsync(360, 800);
            Assert.Equal(
                ["Plan", "Findings", "The day", "Files"],
                await page.EvaluateAsync<string[]>("[...document.querySelectorAll('h2')].map(h => h.innerText)"));
            Assert.Equal(
                [
                    "For everybody", "For the owner and the crew", "For the inspector", "For the welder", "For the plumber",
                    "For the electrician",
                ],
                await page.EvaluateAsync<string[]>("[...document.querySelectorAll('h3')].map(h => h.innerText)"));
            Assert.Equal(2, await page.Locator("figure a img").CountAsync());
            var picture = page.Locator("figure a img").First;
            Assert.InRange((await picture.BoundingBoxAsync())!.Y, 0, 400);
            await picture.ClickAsync();
            Assert.EndsWith("a-1-general-arrangement.svg", page.Url, StringComparison.Ordinal);
        });
    }

    [SkippableFact]
    public async Task No_two_links_have_the_same_words()
    {
        using var folder = Drawn();
        await InChromium(async page =>
        {
            foreach (string index in new[] { "one/index.html", "two/index.html" })
            {
                await page.GotoAsync(new Uri(folder.At(index)).AbsoluteUri);
                string[] words = await page.EvaluateAsync<string[]>(
                    "[...document.querySelectorAll('a')].map(a => a.innerText.trim() || a.querySelector('img').alt)");
                Assert.True(words.Length > 12);
                Assert.DoesNotContain("", words);
                Assert.Equal(words, words.Distinct());
            }
        });
    }

    [SkippableFact]
    public async Task Without_its_style_it_still_fits_and_reads()
    {
        using var folder = Drawn();
        await InChromium(async page =>
        {
            await page.SetViewportSizeAsync(360, 800);
            await page.GotoAsync(new Uri(folder.At("one/index.html")).AbsoluteUri);
            await page.EvaluateAsync("document.querySelector('style').remove()");
            Assert.Equal(0, await page.EvaluateAsync<int>(Overhang));
            Assert.Empty(await page.EvaluateAsync<string[]>(TornWords));
            var result = await page.RunAxe();
            Assert.True(result.Violations.Length == 0, string.Join("; ", result.Violations.Select(v => $"{v.Id}: {v.Nodes[0].Html}")));
        });
    }

    /// <summary>Read out of the printed page by PdfPig: a link on paper is of use only with the name of its file.</summary>
    [SkippableFact]
    public async Task On_paper_every_link_has_its_file_and_nothing_speaks_of_the_screen()
    {
        using var folder = Drawn();
        await InChromium(async page =>
        {
            foreach (string index in new[] { "one/index.html", "two/index.html" })
            {
                await page.GotoAsync(new Uri(folder.At(index)).AbsoluteUri);
                string[] files = await page.EvaluateAsync<string[]>(
                    "[...document.querySelectorAll('a[href]:not([href^=\"#\"])')].map(a => decodeURIComponent(a.getAttribute('href')))");
                using var paper = PdfDocument.Open(await page.PdfAsync(new PagePdfOptions { Format = "A4", PreferCSSPageSize = true }));
                string text = Plain(string.Concat(paper.GetPages().Select(p => p.Text)));
                Assert.All(files, f => Assert.Contains(Plain(f), text));
                Assert.DoesNotContain("opensinfullsize", text);
                Assert.Contains("Findings", text);

                // Each plan begins on a page of its own.
                Assert.True(index == "one/index.html" || paper.NumberOfPages > 2);
            }
        });
    }

    /// <summary>A stranger's names: nothing of them becomes part of the page, and a long one makes it no wider.</summary>
    [SkippableFact]
    public async Task Names_of_a_stranger_are_only_text()
    {
        string name = "<img src=x onerror=document.title='taken'> ' & " + new string('W', 120);
        using var folder = new TemporaryFolder();
        string plan = HostileNameTests.PlanNamed(name);
        folder.Write("a ' & <b>.unit", plan);
        CliRun.In(folder.Path, "", "draw", "a ' & <b>.unit", "--out", ".");
        await InChromium(async page =>
        {
            await page.SetViewportSizeAsync(360, 800);
            await page.GotoAsync(new Uri(folder.At("index.html")).AbsoluteUri);
            Assert.Equal(0, await page.EvaluateAsync<int>(Overhang));
            Assert.Equal(2, await page.EvaluateAsync<int>("document.images.length"));
            Assert.True(await page.EvaluateAsync<bool>("[...document.images].every(i => i.complete && i.naturalWidth > 0)"));
            Assert.DoesNotContain("taken", (await page.TitleAsync())[..5]);
            Assert.Contains("<img src=x", await page.Locator("h1").InnerTextAsync());
        });
    }

    /// <summary>The looks at the page see what they are there to see.</summary>
    [SkippableFact]
    public async Task A_torn_word_and_a_wide_page_are_found() => await InChromium(async page =>
    {
        await page.SetViewportSizeAsync(360, 800);
        await page.SetContentAsync(
            "<!DOCTYPE html><body><p style=\"width:40px;overflow-wrap:anywhere\">refrigeration</p>"
                + "<div style=\"width:500px\">wide</div></body>");
        Assert.Equal(["refrigeration"], await page.EvaluateAsync<string[]>(TornWords));
        Assert.True(await page.EvaluateAsync<int>(Overhang) > 0);
    });

    private static string Plain(string text) => string.Concat(text.Where(c => !char.IsWhiteSpace(c)));

    /// <summary>One plan in all formats; two plans, one of them drawn by an earlier run.</summary>
    private static TemporaryFolder Drawn()
    {
        OutsidePrograms.Find("chromium", "google-chrome");
        var folder = new TemporaryFolder();
        CliRun.In(folder.Path, "", "new", "poultry-40ft", "a.unit");
        CliRun.In(folder.Path, "", "new", "vegetable-l-shed", "b.unit");
        CliRun.In(folder.Path, "", "new", "empty-start", "c.unit");
        CliRun.In(folder.Path, "", "draw", "a.unit", "--format", "svg,pdf,dxf", "--out", "one");
        CliRun.In(folder.Path, "", "draw", "c.unit", "--out", "two");
        CliRun.In(folder.Path, "", "draw", "a.unit", "b.unit", "--out", "two");
        return folder;
    }

    private static async Task InChromium(Func<IPage, Task> look)
    {
        string chromium = OutsidePrograms.Find("chromium", "google-chrome");
        using var playwright = await Playwright.CreateAsync();
        await using var browser =
            await playwright.Chromium.LaunchAsync(new BrowserTypeLaunchOptions { ExecutablePath = chromium, Args = Flags });
        await look(await browser.NewPageAsync());
    }
}
