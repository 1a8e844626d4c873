namespace Floorplan.Checks.Measuring;

/// <summary>Sources that more than one rule cites.</summary>
internal static class Published
{
    /// <summary>Measured bodies: 4082 men and 1986 women; percentiles computed from the public data.</summary>
    public static Source AnsurTwo { get; } = new(
        "ANSUR II, Gordon and others, NATICK/TR-15/007, 2014", Origin.FoundInPublicCopy);

    public static Source SouthAfricanPoultry { get; } = new(
        "Poultry Regulations 2006 under the Meat Safety Act 2000, reg 15, South Africa", Origin.FoundInPublicCopy);

    public static Source PlanReviewSinks { get; } = new(
        "FDA/CFP Food Establishment Plan Review Guide 2000, Part 4", Origin.FoundInPublicCopy);

    public static Source FloorDrains { get; } = new(
        "9 CFR 416.2(e)(4), US CFR", Origin.FromMemory, Force.Law);
}
