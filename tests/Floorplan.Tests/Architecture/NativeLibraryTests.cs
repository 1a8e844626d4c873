using System.Text.Json;
using Xunit;

namespace Floorplan.Tests.Architecture;

/// <summary>The pipeline is plain managed code, so that it runs wherever .NET does.</summary>
public class NativeLibraryTests
{
    /// <summary>The list of run-time assets that the build writes beside the program covers every package of every project before it.</summary>
    [Fact]
    public void The_program_carries_no_native_library()
    {
        string configuration = AppContext.BaseDirectory.Contains("Release", StringComparison.Ordinal) ? "Release" : "Debug";
        string list = Repository.At("src", "Floorplan.Cli", "bin", configuration, "net10.0", "floorplan.deps.json");
        using var document = JsonDocument.Parse(File.ReadAllText(list));
        var packages = document.RootElement.GetProperty("targets").EnumerateObject().SelectMany(t => t.Value.EnumerateObject()).ToList();

        Assert.Contains(packages, p => p.Name.StartsWith("Floorplan.Drawing/", StringComparison.Ordinal));
        Assert.DoesNotContain(packages, p => p.Value.TryGetProperty("native", out _));
        Assert.DoesNotContain(packages, p => p.Value.TryGetProperty("runtimeTargets", out var targets)
            && targets.EnumerateObject().Any(t => t.Value.GetProperty("assetType").GetString() == "native"));
    }
}
