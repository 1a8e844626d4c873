using System.Runtime.InteropServices;
using NetTopologySuite.Geometries;

namespace Floorplan.Model.Space.Keeping;

/// <summary>
/// What a result was made from, as plain numbers. Two keys are equal when all their numbers are, bit by bit: no rounding and no hash
/// decides.
/// </summary>
internal sealed class ContentKey : IEquatable<ContentKey>
{
    private readonly List<double> numbers = [];

    public void Add(double number) => numbers.Add(number);

    /// <summary>With its length before it, so that where one list ends counts.</summary>
    public void Add(IReadOnlyList<Coordinate> points)
    {
        numbers.Add(points.Count);
        for (int i = 0; i < points.Count; i++)
        {
            numbers.Add(points[i].X);
            numbers.Add(points[i].Y);
        }
    }

    public void Add(Polygon polygon)
    {
        numbers.Add(polygon.NumInteriorRings);
        Add(polygon.ExteriorRing.Coordinates);
        foreach (var hole in polygon.InteriorRings)
        {
            Add(hole.Coordinates);
        }
    }

    public bool Equals(ContentKey? other) => other is not null && Bytes.SequenceEqual(other.Bytes);

    public override bool Equals(object? obj) => Equals(obj as ContentKey);

    public override int GetHashCode()
    {
        var hash = default(HashCode);
        hash.AddBytes(Bytes);
        return hash.ToHashCode();
    }

    private ReadOnlySpan<byte> Bytes => MemoryMarshal.AsBytes(CollectionsMarshal.AsSpan(numbers));
}
