namespace Floorplan.Model.Openings;

/// <summary>The shell's own doors as an opening between outside and the room at that end.</summary>
internal static class CargoDoors
{
    /// <summary>The name that the plan gives them; a plan may use it in its flows.</summary>
    public const string Id = "cargo-doors";
}
