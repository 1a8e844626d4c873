using Floorplan.Checks.Framework;

namespace Floorplan.Checks.Rules.WaterAndDrain;

/// <summary>The rules of this folder, in the order they are listed.</summary>
internal static class WaterAndDrainRules
{
    public static IReadOnlyList<Rule> All { get; } =
    [
        new WaterTooFar(),
        new DrainTooFar(),
        new RoomWithoutDrain(),
        new DrainTooFew(),
        new FallNotPossible(),
        new HandSinkTooFar(),
        new HandSinkMissing(),
        new HandSinksTooFew(),
        new SinkNotServed(),
        new SinkBlocked(),
        new ToiletNotServed(),
        new AirGapMissing(),
        new BackflowGuardMissing(),
        new HoseMissesFloor(),
        new EyewashTooFar(),
        new HotWaterShort(),
        new SupplyTooSmall(),
        new DrainPipeTooSmall(),
        new DrainLineUphill(),
        new WasteTankTooSmall(),
    ];
}
