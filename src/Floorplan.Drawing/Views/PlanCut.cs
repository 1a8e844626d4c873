using Floorplan.Language.Quantities;

namespace Floorplan.Drawing.Views;

/// <summary>Where the plan cuts the building.</summary>
public static class PlanCut
{
    /// <summary>About 4 ft above the floor: common practice (F2).</summary>
    public static Length Height { get; } = Length.FromMillimetres(1200);

    /// <summary>True when a thing from <paramref name="bottom"/> to <paramref name="top"/> is cut; what is above is drawn dashed.</summary>
    public static bool Cuts(Length bottom, Length top) => bottom < Height && top > Height;
}
