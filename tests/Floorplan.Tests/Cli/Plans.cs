using Floorplan.Checks.Framework;
using Floorplan.Tests.Architecture;

namespace Floorplan.Tests.Cli;

/// <summary>Plans that command tests run on.</summary>
internal static class Plans
{
    /// <summary>Draws without errors.</summary>
    public static string Good => File.ReadAllText(Repository.At("templates", "fish-20ft.unit"));

    /// <summary>Binds, and has an error.</summary>
    public static string Overlapping => RuleCatalogue.Find("overlap")!.Bad;

    /// <summary>Does not read.</summary>
    public static string Broken => Good.Replace("station bench", "staton bench", StringComparison.Ordinal);

    public static IReadOnlyList<string> Templates { get; } =
        [.. Directory.EnumerateFiles(Repository.At("templates"), "*.unit").Order(StringComparer.Ordinal)];
}
