using Floorplan.Model;

namespace Floorplan.Checks.Framework;

/// <summary>Where a figure or a rule comes from.</summary>
/// <param name="Title">Law, standard or handbook with clause and edition: <c>29 CFR 1910.36(g)(2), US CFR</c>.</param>
/// <param name="Confirmed">How we know: read in a public copy, common practice, from memory, own assumption.</param>
public sealed record Source(string Title, Origin Confirmed, Force Force = Force.Guidance);

public enum Origin
{
    FoundInPublicCopy,
    FoundInSecondaryCopy,
    CommonPractice,
    FromMemory,
    OwnAssumption,
}

public enum Force
{
    Law,
    ModelCode,
    Guidance,
}
