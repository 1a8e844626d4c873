using System.Text.Json;
using Xunit;

namespace Floorplan.Tests.Architecture;

/// <summary>The pipeline up to the drawing is plain managed code, so that it runs wherever .NET does. Only the solver behind it is native.</summary>
public class NativeLibraryTests
{
    /// <summary>The list of run-time assets that the build writes beside a library covers every package of every project before it.</summary>
    [Theory]
    [InlineData("Floorplan.Drawing")]
    [InlineData("Floorplan.Checks")]
    [InlineData("Floorplan.Sizing")]
    public void A_library_of_the_pipeline_carries_no_native_library(string project)
    {
        string configuration = AppContext.BaseDirectory.Contains("Release", StringComparison.Ordinal) ? "Release" : "Debug";
        string list = Repository.At("src", project, "bin", configuration, "net10.0", project + ".deps.json");
        using var document = JsonDocument.Parse(File.ReadAllText(list));
        var packages = document.RootElement.GetProperty("targets").EnumerateObject().SelectMany(t => t.Value.EnumerateObject()).ToList();

        Assert.Contains(packages, p => p.Name.StartsWith("Floorplan.Model/", StringComparison.Ordinal));
        Assert.DoesNotContain(packages, p => p.Value.TryGetProperty("native", out _));
        Assert.DoesNotContain(packages, p => p.Value.TryGetProperty("runtimeTargets", out var targets)
            && targets.EnumerateObject().Any(t => t.Value.GetProperty("assetType").GetString() == "native"));
    }
}
