using System.Text.Json;
using Xunit;

namespace Floorplan.Tests.Cli;

/// <summary>The document that DEVELOPERS.md describes.</summary>
public class CheckJsonTests
{
    [Fact]
    public void A_finding_carries_every_field()
    {
        var run = CliRun.WithInput(Plans.Overlapping, "check", "-", "--output", "json");
        Assert.Equal(1, run.Exit);
        using var document = JsonDocument.Parse(run.Out);
        var root = document.RootElement;
        Assert.Equal(1, root.GetProperty("schema").GetInt32());
        Assert.Equal(1, root.GetProperty("exit").GetInt32());

        var file = Assert.Single(root.GetProperty("files").EnumerateArray());
        Assert.Equal("stdin", file.GetProperty("file").GetString());
        Assert.Equal(1, file.GetProperty("counts").GetProperty("errors").GetInt32());
        var finding = file.GetProperty("findings").EnumerateArray().First(f => f.GetProperty("rule").GetString() == "overlap");
        Assert.Equal(
            [
                "number", "rule", "severity", "message", "things", "measured", "limitValue", "limit", "figures", "sources", "mend",
                "proposal", "span", "at", "accepted"],
            finding.EnumerateObject().Select(p => p.Name));
        Assert.Equal("error", finding.GetProperty("severity").GetString());
        Assert.Equal(2, finding.GetProperty("things").GetArrayLength());
        Assert.True(finding.GetProperty("span").GetProperty("line").GetInt32() > 1);
        Assert.True(finding.GetProperty("at").GetProperty("x").GetDouble() > 0);
    }

    [Fact]
    public void Every_thing_is_there_with_what_is_said_of_it()
    {
        using var document = JsonDocument.Parse(CliRun.WithInput(Plans.Good, "check", "-", "--output", "json").Out);
        var things = document.RootElement.GetProperty("files")[0].GetProperty("things").EnumerateArray().ToList();
        Assert.All(things, t => Assert.Equal(["kind", "id", "label", "line", "details"], t.EnumerateObject().Select(p => p.Name)));
        var station = things.First(t => t.GetProperty("kind").GetString() == "station");
        Assert.False(string.IsNullOrEmpty(station.GetProperty("details").GetProperty("size").GetString()));
        Assert.True(station.GetProperty("line").GetInt32() > 1);
    }

    [Fact]
    public void A_mistake_in_the_text_carries_its_place_and_its_way_out()
    {
        using var document = JsonDocument.Parse(CliRun.WithInput(Plans.Broken, "check", "-", "--output", "json").Out);
        var diagnostic = document.RootElement.GetProperty("files")[0].GetProperty("diagnostics")[0];
        Assert.Equal(["code", "severity", "message", "help", "span", "related"], diagnostic.EnumerateObject().Select(p => p.Name));
        Assert.Contains("station", diagnostic.GetProperty("help").GetString() + diagnostic.GetProperty("message").GetString());
    }

    [Fact]
    public void Several_files_one_of_them_missing_are_one_valid_document()
    {
        using var folder = new TemporaryFolder();
        folder.Write("a.unit", Plans.Good);
        folder.Write("b.unit", Plans.Overlapping);
        var run = CliRun.In(folder.Path, "", "check", "--output", "json", "a.unit", "b.unit", "c.unit");
        using var document = JsonDocument.Parse(run.Out);
        var files = document.RootElement.GetProperty("files");
        Assert.Equal(3, files.GetArrayLength());
        Assert.Equal(2, document.RootElement.GetProperty("exit").GetInt32());
        Assert.Equal(JsonValueKind.Null, files[0].GetProperty("problem").ValueKind);
        Assert.StartsWith("there is no such file", files[2].GetProperty("problem").GetString());
    }
}
