using Floorplan.Checks.Framework;

namespace Floorplan.Checks.Rules.Shell;

/// <summary>The rules of this folder, in the order they are listed.</summary>
internal static class ShellRules
{
    public static IReadOnlyList<Rule> All { get; } =
    [
        new CutsFrame(),
        new OpeningsTooClose(),
        new WallCutTooMuch(),
        new HotWorkNearLining(),
        new TooWideForRoad(),
        new TooHighForRoad(),
        new FloorOverloaded(),
        new TooHeavy(),
        new HitchLoad(),
        new AxleOverloaded(),
    ];
}
