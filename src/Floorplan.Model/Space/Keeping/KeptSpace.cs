using Floorplan.Model.Space.Mesh;
using NetTopologySuite.Geometries;

namespace Floorplan.Model.Space.Keeping;

/// <summary>
/// Pieces of a floor space that stay right when the rest of the plan changes: meshes of free floor and ways over them, each by what it was
/// made from. For one thread.
/// </summary>
internal sealed class KeptSpace
{
    private readonly Generations<ContentKey, (FloorMesh Mesh, double Scale)> meshes = new();

    public KeptWays Ways { get; } = new();

    /// <summary>Begins the next plan.</summary>
    public void Next()
    {
        meshes.Next();
        Ways.Next();
    }

    /// <summary>A mesh is made of the outlines of its floor, of the walls and of the things on it, and of half its mover's width.</summary>
    public (FloorMesh Mesh, double Scale) Mesh(
        IReadOnlyList<Polygon> floors, IReadOnlyList<List<Coordinate>> walls, IReadOnlyList<List<Coordinate>> things, double half,
        Func<(FloorMesh Mesh, double Scale)> make)
    {
        var key = new ContentKey();
        key.Add(half);
        key.Add(floors.Count);
        foreach (var floor in floors)
        {
            key.Add(floor);
        }

        key.Add(walls.Count);
        foreach (var ring in walls.Concat(things))
        {
            key.Add(ring);
        }

        return meshes.Of(key, make);
    }
}
