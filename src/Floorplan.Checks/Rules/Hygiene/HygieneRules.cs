using Floorplan.Checks.Framework;

namespace Floorplan.Checks.Rules.Hygiene;

/// <summary>The rules of this folder, in the order they are listed.</summary>
internal static class HygieneRules
{
    public static IReadOnlyList<Rule> All { get; } =
    [
        new ProductGoesBack(),
        new ProductThroughDirtier(),
        new WasteMeetsProduct(),
        new WasteThroughClean(),
        new WayOutForWasteMissing(),
        new BinBehindWall(),
        new RawReturnsCross(),
        new SuppliesThroughDirty(),
        new UnwashedEntry(),
        new StaffCrossesBack(),
        new CrewThroughDirty(),
        new RoomsNotSeparated(),
        new OuterDoorStaysOpen(),
        new DoublesBack(),
        new ToiletOpensOnFood(),
        new ToiletMissing(),
        new ToiletsTooFew(),
        new ChangingPlaceMissing(),
        new AirRunsToClean(),
        new DrainRunsToClean(),
        new ToiletDrainJoins(),
        new SterilizerMissing(),
        new SterilizerTooFar(),
        new SterilizerTooCool(),
        new ChemicalsNearFood(),
        new FinishMissing(),
        new UnknownFinish(),
    ];
}
