namespace Floorplan.Language.Details;

/// <summary>Whether a statement can do without a detail.</summary>
public enum Needed
{
    Never,

    /// <summary>The parser tells of a statement without it.</summary>
    Always,

    /// <summary>Needed too, but told where the plan is put together, because a kind or another detail may give it.</summary>
    ToldByBinder,
}
