namespace Floorplan.Sizing.Trailers;

/// <summary>What a group of axles may carry on the roads of the US (23 CFR 658.17; bridge formula, FHWA), in lb.</summary>
internal static class BridgeFormula
{
    private const double Single = 20_000;
    private const double Tandem = 34_000;
    private const double Gross = 80_000;

    /// <summary>Axles within this many inches are one, and within the second a tandem.</summary>
    private const double OneWithin = 40;

    /// <inheritdoc cref="OneWithin"/>
    private const double TandemWithin = 96;

    /// <summary>The bare formula, W = 500 [L N / (N - 1) + 12 N + 36], not rounded.</summary>
    /// <param name="feet">From the first to the last axle.</param>
    /// <param name="axles">Two at least.</param>
    public static double Pounds(double feet, int axles) => 500 * ((feet * axles / (axles - 1)) + (12 * axles) + 36);

    /// <summary>The least of the axle limits, the formula and the gross weight.</summary>
    /// <param name="inches">From the first to the last axle.</param>
    public static double Allowed(double inches, int axles)
    {
        double group = axles < 2 || inches <= OneWithin ? Single
            : inches <= TandemWithin ? Tandem
            : Math.Min(Pounds(inches / 12, axles), axles * Single);
        return Math.Min(group, Gross);
    }
}
