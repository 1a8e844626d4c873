namespace Floorplan.Language.Quantities;

/// <summary>
/// Rounds to what a drawing prints: 0.1 mm or 1/16 in. Places are rounded, not the distances between them, so that a chain adds up as
/// printed and no distance is wrong by more than one step; pieces to saw are rounded before they are added up.
/// </summary>
public static class LengthRounding
{
    /// <summary>What geometry in floating point may be off by, in nanometres.</summary>
    private const long Slack = 1;

    /// <summary>The smallest step that <see cref="LengthText"/> prints.</summary>
    public static Length Step(UnitSystem units) => units == UnitSystem.Metric
        ? new Length(Length.NanometresPerMillimetre / 10)
        : new Length(Length.NanometresPerInch / 16);

    /// <summary>Half a step goes up.</summary>
    public static Length Round(Length length, UnitSystem units)
    {
        long step = Step(units).Nanometres;
        return new Length((long)Math.Floor((length.Nanometres + (step / 2.0)) / step) * step);
    }

    /// <summary>To a step that is no shorter, so that what is asked for suffices: whole millimetres, or 1/16 in.</summary>
    public static Length RoundUp(Length length, UnitSystem units)
    {
        long step = units == UnitSystem.Metric ? Length.NanometresPerMillimetre : Step(units).Nanometres;
        return new Length((long)Math.Ceiling((length.Nanometres - Slack) / (double)step) * step);
    }
}
