using System.Reflection;
using System.Xml.Linq;
using Xunit;

namespace Floorplan.Tests.Architecture;

/// <summary>The arrows between projects, as DEVELOPERS.md draws them.</summary>
public class ArrowTests
{
    private static readonly Dictionary<string, string[]> Arrows = new()
    {
        ["Floorplan.Language"] = [],
        ["Floorplan.Model"] = ["Floorplan.Language"],
        ["Floorplan.Sizing"] = ["Floorplan.Model"],
        ["Floorplan.Arrange"] = ["Floorplan.Sizing"],
        ["Floorplan.Checks"] = ["Floorplan.Model", "Floorplan.Sizing"],
        ["Floorplan.Drawing"] = ["Floorplan.Checks", "Floorplan.Model", "Floorplan.Sizing"],
        ["Floorplan.Print"] = ["Floorplan.Drawing"],
        ["Floorplan.Cli"] =
            ["Floorplan.Arrange", "Floorplan.Checks", "Floorplan.Drawing", "Floorplan.Language", "Floorplan.Model", "Floorplan.Print"],
    };

    public static TheoryData<string> Projects => [.. Arrows.Keys];

    [Fact]
    public void Every_project_has_its_arrows_listed()
        => Assert.Equal(Arrows.Keys.Order(), Directory.EnumerateDirectories(Repository.At("src")).Select(Path.GetFileName).Order());

    [Theory]
    [MemberData(nameof(Projects))]
    public void A_project_refers_to_exactly_what_its_arrows_allow(string project)
    {
        var document = XDocument.Load(Repository.At("src", project, project + ".csproj"));
        var refersTo = document.Descendants("ProjectReference")
            .Select(r => Path.GetFileNameWithoutExtension(r.Attribute("Include")!.Value));
        Assert.Equal(Arrows[project].Order(), refersTo.Order());
    }

    /// <summary>
    /// What the compiler really used may follow arrows through (Checks sees Language by way of Model), and never against them.
    /// </summary>
    [Theory]
    [MemberData(nameof(Projects))]
    public void An_assembly_uses_only_what_lies_before_it_in_the_pipeline(string project)
    {
        string name = project == "Floorplan.Cli" ? "floorplan" : project;
        var uses = Assembly.Load(name).GetReferencedAssemblies().Select(a => a.Name!).Where(Arrows.ContainsKey);
        Assert.Subset(Before(project), uses.ToHashSet());
    }

    private static HashSet<string> Before(string project)
        => [.. Arrows[project].SelectMany(p => Before(p).Append(p))];
}
