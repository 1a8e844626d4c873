using Floorplan.Language.Syntax.Values;
using Floorplan.Language.Words.Terms;

namespace Floorplan.Language.Details.Services;

/// <summary>What a hole may say.</summary>
public static class HoleDetails
{
    public static Detail<TermSyntax<HoleThrough>> Through { get; } =
        TermDetail.OneOf<HoleThrough>("what it goes through when it is in no wall");

    public static Detail<SizeSyntax> Size { get; } = new(
        "size", "its diameter, or two sides", ["size 51", "size 410 x 310", "size 430 x 310"], c
            => c.Size("the diameter of the hole, or two sides", 1, 2));

    public static IReadOnlyList<Detail> All { get; } = [Through, ServiceDetails.Place, ServiceDetails.Height, Size];
}
