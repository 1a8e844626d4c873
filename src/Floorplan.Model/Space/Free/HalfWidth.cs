namespace Floorplan.Model.Space.Free;

/// <summary>How far the middle of a mover stays off fixed things.</summary>
internal static class HalfWidth
{
    /// <summary>
    /// A mover goes through a gap that is exactly as wide as it: a gap may be this much too narrow, in mm. Own assumption, far below
    /// what is built.
    /// </summary>
    public const double Slack = 0.1;

    public static double Of(Mover mover) => Math.Max(Slack, mover.WidthMm - Slack) / 2;
}
