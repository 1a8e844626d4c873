using Floorplan.Language.Details;
using Floorplan.Language.Syntax.Statements;

namespace Floorplan.Model.Details.Tables;

/// <summary>All that an overhead rail may say.</summary>
internal static class RailTable
{
    public static IReadOnlyList<SaidRow<RailStatement>> All { get; } =
    [
        SaidRows<RailStatement>.Of(RailDetails.Room),
        SaidRows<RailStatement>.Part<IReadOnlyList<CornerSyntax>, IReadOnlyList<CornerSyntax>>(
            "path",
            RailDetails.Path,
            p => p,
            ShellTable.Points),
        SaidRows<RailStatement>.Of(RailDetails.Height),
        SaidRows<RailStatement>.Of(RailDetails.Pitch),
        SaidRows<RailStatement>.Names(RailDetails.Through),
    ];
}
