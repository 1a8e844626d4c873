using Floorplan.Checks.Framework;

namespace Floorplan.Checks.Rules.File;

/// <summary>The rules of this folder, in the order they are listed. The last one looks at what all the others found.</summary>
internal static class FileRules
{
    public static IReadOnlyList<Rule> All { get; } =
    [
        new Unused(),
        new Unreachable(),
        new UnknownRule(),
        new LimitDoesNotFit(),
        new AcceptsNothing(),
    ];
}
