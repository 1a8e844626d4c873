using Floorplan.Checks.Framework;
using Floorplan.Sizing.Power;

namespace Floorplan.Checks.Limits;

/// <summary>Which depth holds before one panel: rule and sheet 5 ask the same.</summary>
public static class PanelDepths
{
    public const string Depth = "depth before a panel";
    public const string Grounded = "depth before a panel of more than 150 V to ground, facing grounded parts";
    public const string Live = "depth before a panel of more than 150 V to ground, facing live parts";

    /// <summary>Table S-1 parts 0 to 150 V from 151 to 600 V.</summary>
    private const double LowVoltage = 150;

    /// <summary>Null where no figure holds. A figure that the plan sets holds for every panel.</summary>
    public static AppliedLimit? For(PlanLimits limits, WorkingSpace space)
    {
        var rule = RuleCatalogue.Find("panel-space")!;
        var least = limits.Find(rule, Depth);
        return least is null or { SetBy: not null } || !(space.ToGround > LowVoltage) || space.Faces == Faced.Nothing
            ? least
            : limits.Find(rule, space.Faces == Faced.Live ? Live : Grounded) ?? least;
    }
}
