using Floorplan.Language.Parsing;
using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax.Values;
using Floorplan.Language.Words.Terms;

namespace Floorplan.Language.Details.Services;

/// <summary>What a drain may say.</summary>
public static class DrainDetails
{
    public static Detail<TermSyntax<DrainForm>> Form { get; } = TermDetail.OneOf<DrainForm>("what it takes water from");

    /// <summary>Wider is a slip of the unit; own assumption.</summary>
    private static readonly Length Largest = Length.FromMillimetres(600);

    public static Detail<LengthSyntax> Size { get; } = new(
        "size",
        "the size of its waste pipe",
        ["size 101", "size 103"],
        c => c.LengthUpTo("a size", "the waste pipe of a drain", Largest));

    public static Detail<LengthSyntax> OutletBelow { get; } = new(
        "outlet", "how far its outlet lies below the floor", ["outlet 151 below floor", "outlet 153 below floor"], Outlet);

    public static Detail<NameSyntax> RunsTo { get; } = new(
        "runs to", "the drain that its line comes to next", ["runs to fd1", "runs to fd2"], c => c.Name("the name of a drain"));

    public static Detail<RatingSyntax> Rating { get; } = Ratings.Of([QuantityKind.Flow], "60 L/min", "80 L/min");

    public static IReadOnlyList<Detail> All { get; } = [Form, ServiceDetails.Place, ServiceDetails.Height, Size, OutletBelow, RunsTo];

    private static LengthSyntax? Outlet(Cursor c)
    {
        var below = c.Length("how far the outlet lies below the floor");
        _ = below is not null && c.Expect("below") && c.Expect("floor");
        return below;
    }
}
