using System.Text.Json;
using Xunit;

namespace Floorplan.Tests.Architecture;

/// <summary>The pipeline up to the drawing is plain managed code, so that it runs wherever .NET does.</summary>
public class NativeLibraryTests
{
    /// <summary>
    /// The list of run-time assets that the build writes beside an assembly covers every package of every project before it.
    /// </summary>
    [Theory]
    [InlineData("Floorplan.Language", false)]
    [InlineData("Floorplan.Model", false)]
    [InlineData("Floorplan.Sizing", false)]
    [InlineData("Floorplan.Checks", false)]
    [InlineData("Floorplan.Drawing", false)]
    [InlineData("Floorplan.Print", true)]
    [InlineData("Floorplan.Arrange", true)]
    public void Only_printing_and_the_solver_carry_a_native_library(string project, bool carries)
    {
        string configuration = AppContext.BaseDirectory.Contains("Release", StringComparison.Ordinal) ? "Release" : "Debug";
        string list = Repository.At("src", project, "bin", configuration, "net10.0", project + ".deps.json");
        using var document = JsonDocument.Parse(File.ReadAllText(list));
        var packages = document.RootElement.GetProperty("targets").EnumerateObject().SelectMany(t => t.Value.EnumerateObject()).ToList();

        Assert.Contains(packages, p => p.Name.StartsWith(project + "/", StringComparison.Ordinal));
        Assert.Equal(carries, packages.Any(p => HasNative(p.Value)));
    }

    private static bool HasNative(JsonElement package) => package.TryGetProperty("native", out _)
        || (package.TryGetProperty("runtimeTargets", out var targets)
            && targets.EnumerateObject().Any(t => t.Value.GetProperty("assetType").GetString() == "native"));
}
