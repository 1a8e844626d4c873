using SixLabors.ImageSharp;
using SixLabors.ImageSharp.PixelFormats;

namespace Floorplan.Tests.Outside;

/// <summary>
/// How far two pictures of one drawing are apart. Renderers smooth edges each in their own way, so single pixels always
/// differ, but the ink in a block stays the same; a missing, moved or differently coloured thing changes it.
/// </summary>
/// <param name="Mean">Mean difference of brightness over all pixels, 0 to 1.</param>
/// <param name="WorstBlock">The largest difference in ink of one block of <see cref="BlockPixels"/> square, 0 to 1.</param>
/// <param name="At">The middle of that block, in pixels.</param>
internal sealed record PictureDifference(double Mean, double WorstBlock, (int X, int Y) At)
{
    public const int BlockPixels = 24;

    public static PictureDifference Between(string png, string otherPng)
    {
        using var a = Image.Load<L8>(png);
        using var b = Image.Load<L8>(otherPng);
        int width = Math.Min(a.Width, b.Width);
        int height = Math.Min(a.Height, b.Height);
        double sum = 0, worst = 0;
        var at = (0, 0);
        for (int top = 0; top < height; top += BlockPixels)
        {
            for (int left = 0; left < width; left += BlockPixels)
            {
                int right = Math.Min(left + BlockPixels, width), bottom = Math.Min(top + BlockPixels, height);
                var (apart, ink) = Compare(a, b, left, top, right, bottom);
                sum += apart;
                double block = Math.Abs(ink) / ((right - left) * (bottom - top));
                if (block > worst)
                {
                    (worst, at) = (block, ((left + right) / 2, (top + bottom) / 2));
                }
            }
        }

        return new PictureDifference(sum / (width * height), worst, at);
    }

    // Differences of single pixels, without and with their sign.
    private static (double Apart, double Ink) Compare(Image<L8> a, Image<L8> b, int left, int top, int right, int bottom)
    {
        double apart = 0, ink = 0;
        for (int y = top; y < bottom; y++)
        {
            for (int x = left; x < right; x++)
            {
                double difference = (a[x, y].PackedValue - b[x, y].PackedValue) / (double)byte.MaxValue;
                apart += Math.Abs(difference);
                ink += difference;
            }
        }

        return (apart, ink);
    }
}
