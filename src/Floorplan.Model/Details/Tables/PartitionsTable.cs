using Floorplan.Language.Details;
using Floorplan.Language.Syntax.Statements;

namespace Floorplan.Model.Details.Tables;

/// <summary>All that the partitions may say.</summary>
internal static class PartitionsTable
{
    public static IReadOnlyList<SaidRow<PartitionsStatement>> All { get; } =
    [
        SaidRows<PartitionsStatement>.Of(PartitionsDetails.Thickness),
        SaidRows<PartitionsStatement>.Of(PartitionsDetails.Height),
        SaidRows<PartitionsStatement>.Of(PartitionsDetails.Build),
    ];
}
