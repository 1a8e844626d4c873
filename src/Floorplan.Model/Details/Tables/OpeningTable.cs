using Floorplan.Language.Details;
using Floorplan.Language.Syntax.Statements;

namespace Floorplan.Model.Details.Tables;

/// <summary>All that an opening may say.</summary>
public static class OpeningTable
{
    public static IReadOnlyList<SaidRow<OpeningStatement>> All { get; } =
    [
        SaidRows<OpeningStatement>.Of(OpeningDetails.Wall),
        SaidRows<OpeningStatement>.Size(OpeningDetails.Size),
        SaidRows<OpeningStatement>.Place(OpeningDetails.Place),
        SaidRows<OpeningStatement>.Of(OpeningDetails.Sill),
        SaidRows<OpeningStatement>.Of(OpeningDetails.Swings),
        SaidRows<OpeningStatement>.Of(OpeningDetails.Leaf, "leaf"),
        SaidRows<OpeningStatement>.Of(OpeningDetails.Hinge),
        SaidRows<OpeningStatement>.Mark(OpeningDetails.ClosesItself),
        SaidRows<OpeningStatement>.Mark(OpeningDetails.OpensFromInside),
        SaidRows<OpeningStatement>.Of(OpeningDetails.Steps),
        SaidRows<OpeningStatement>.Mark(OpeningDetails.Ramp),
        SaidRows<OpeningStatement>.Mark(OpeningDetails.Guard),
        SaidRows<OpeningStatement>.Part<FrameSyntax, FrameSyntax>("frame", OpeningDetails.Frame, f => f, (f, units) =>
            f.Note?.Text ?? $"{f.Form?.Text} {(f.Size is { } size ? SaidRows<OpeningStatement>.Text(size, units) : "")}".Trim()),
        SaidRows<OpeningStatement>.Of(OpeningDetails.Radius),
    ];
}
