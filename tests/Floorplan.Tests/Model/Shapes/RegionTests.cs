using CsCheck;
using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax;
using Floorplan.Model.Shapes;
using NetTopologySuite.Geometries;
using Xunit;

namespace Floorplan.Tests.Model.Shapes;

public class RegionTests
{
    private static readonly Gen<Box> AnyBox =
        from west in Gen.Int[0, 20]
        from south in Gen.Int[0, 20]
        from width in Gen.Int[1, 10]
        from depth in Gen.Int[1, 10]
        select new Box(Mm(west), Mm(south), Mm(west + width), Mm(south + depth));

    [Fact]
    public void Cutting_boxes_out_gives_the_area_that_general_geometry_gives()
        => AnyBox.Array[0, 6].Sample(holes =>
        {
            var region = Region.Of(new Box(Mm(0), Mm(0), Mm(25), Mm(25)));
            Geometry same = region.ToPolygons()[0];
            foreach (var hole in holes)
            {
                region = region.Less(hole);
                same = same.Difference(hole.ToPolygon());
            }

            Assert.Equal(same.Area, region.AreaSquareMillimetres, 6);
            Assert.Equal(same.Area, region.ToPolygons().Sum(p => p.Area), 6);
            Assert.Equal(same.Length, region.Faces.Sum(f => f.Run.Millimetres), 6);
        });

    [Fact]
    public void A_thing_meets_the_step_that_it_stands_under()
    {
        var stepped = Region.Of(new Box(Mm(0), Mm(0), Mm(100), Mm(60))).Less(new Box(Mm(0), Mm(40), Mm(30), Mm(60)));
        Assert.Equal(Mm(40), stepped.FaceTowards(Side.North, Mm(0), Mm(20)));
        Assert.Equal(Mm(40), stepped.FaceTowards(Side.North, Mm(10), Mm(50)));
        Assert.Equal(Mm(60), stepped.FaceTowards(Side.North, Mm(30), Mm(50)));
        Assert.Equal(Mm(30), stepped.FaceTowards(Side.West, Mm(45), Mm(50)));
        Assert.Equal(Mm(0), stepped.FaceTowards(Side.West, Mm(0), Mm(40)));
    }

    private static Length Mm(double mm) => Length.FromMillimetres(mm);
}
