using Floorplan.Checks.Framework;

namespace Floorplan.Checks.Rules.File;

/// <summary>The rules of this folder, in the order they are listed.</summary>
internal static class FileRules
{
    public static IReadOnlyList<Rule> All { get; } =
    [
    ];
}
