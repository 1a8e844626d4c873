using Floorplan.Sizing.Working;

namespace Floorplan.Drawing.Sheets.Keeping;

/// <summary>Which figure of the new plan stands where one of the old plan stood: a figure is itself only as an object.</summary>
internal sealed class FigurePairs
{
    private readonly Dictionary<Figure, Figure> newer = new(ReferenceEqualityComparer.Instance);

    /// <summary>False when they are not as many, or do not print the same.</summary>
    public bool Add(IReadOnlyList<Figure> old, IReadOnlyList<Figure> now)
    {
        if (old.Count != now.Count)
        {
            return false;
        }

        for (int i = 0; i < old.Count; i++)
        {
            if (old[i].Text != now[i].Text || old[i].Name != now[i].Name || old[i].Of != now[i].Of)
            {
                return false;
            }

            newer[old[i]] = now[i];
        }

        return true;
    }

    public Figure Of(Figure old) => newer.GetValueOrDefault(old, old);
}
