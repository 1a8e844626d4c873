using Floorplan.Checks.Framework;

namespace Floorplan.Checks.Rules.WaterAndDrain;

/// <summary>The rules of this folder, in the order they are listed.</summary>
internal static class WaterAndDrainRules
{
    public static IReadOnlyList<Rule> All { get; } =
    [
        new NoWaterNear(),
        new NoDrainNear(),
        new RoomWithoutDrain(),
        new DrainTooFew(),
        new FallNotPossible(),
        new HandSinkTooFar(),
        new HandSinkMissing(),
        new HandSinksTooFew(),
        new SinkNotServed(),
        new SinkBlocked(),
        new NoAirGap(),
        new NoBackflowGuard(),
        new HoseMissesFloor(),
        new NoEyewashNear(),
    ];
}
