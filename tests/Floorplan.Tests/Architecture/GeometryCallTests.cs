using System.Reflection.Metadata;
using System.Reflection.PortableExecutable;
using Xunit;

namespace Floorplan.Tests.Architecture;

/// <summary>
/// The library's overlays give a polygon, a line, a point or a mix of them, as the shapes happen to lie. `Overlays` gives one kind, so all
/// code goes through it.
/// </summary>
public class GeometryCallTests
{
    private static readonly string[] Raw = ["Intersection", "Difference", "Union", "SymmetricDifference"];

    [Theory]
    [InlineData("Floorplan.Model")]
    [InlineData("Floorplan.Sizing")]
    [InlineData("Floorplan.Checks")]
    [InlineData("Floorplan.Drawing")]
    [InlineData("Floorplan.Print")]
    [InlineData("Floorplan.Arrange")]
    public void No_code_calls_an_overlay_of_the_geometry_library_itself(string project)
    {
        using var file = File.OpenRead(Path.Combine(AppContext.BaseDirectory, project + ".dll"));
        using var image = new PEReader(file);
        var data = image.GetMetadataReader();
        var called = data.MemberReferences.Select(data.GetMemberReference)
            .Where(m => m.Parent.Kind == HandleKind.TypeReference)
            .Select(m => (Type: data.GetString(data.GetTypeReference((TypeReferenceHandle)m.Parent).Name), Name: data.GetString(m.Name)))
            .Where(m => m.Type is "Geometry" or "Polygon" or "LineString" or "GeometryCollection" && Raw.Contains(m.Name));
        Assert.Empty(called);
    }
}
