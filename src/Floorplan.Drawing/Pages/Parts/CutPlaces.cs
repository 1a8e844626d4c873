namespace Floorplan.Drawing.Pages.Parts;

/// <summary>Where a large view is cut, along one of its sides: near the places that make parts alike, and where no text stands.</summary>
internal static class CutPlaces
{
    /// <summary>A cut may be moved this far to find a gap between texts, mm; own choice.</summary>
    public const double Reach = 12;

    private const double Step = 0.25;

    /// <summary>More paper between a cut and the next text is no better, mm.</summary>
    private const double Enough = 1.5;

    /// <summary>Both ends of the side and the cuts between them, in mm from its start.</summary>
    /// <param name="texts">From where to where each text stands along the side.</param>
    public static double[] Of(double length, int parts, IReadOnlyCollection<(double Low, double High)> texts) =>
    [
        0, .. Enumerable.Range(1, parts - 1).Select(i => Clearest(i * length / parts, texts)), length,
    ];

    /// <summary>The nearest of the places that have most paper round them.</summary>
    private static double Clearest(double wanted, IReadOnlyCollection<(double Low, double High)> texts)
    {
        double best = wanted;
        double most = double.NegativeInfinity;
        for (double off = 0; off <= Reach && most < Enough; off += Step)
        {
            foreach (double place in (double[])[wanted - off, wanted + off])
            {
                double clear = texts.Select(t => Math.Max(t.Low - place, place - t.High)).DefaultIfEmpty(Enough).Min();
                if (clear > most)
                {
                    (best, most) = (place, clear);
                }
            }
        }

        return best;
    }
}
