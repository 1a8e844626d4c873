using Floorplan.Language.Details;
using Floorplan.Language.Syntax.Statements;

namespace Floorplan.Model.Details.Tables;

/// <summary>All that an <c>accept</c> statement may say after its reason.</summary>
internal static class AcceptTable
{
    public static IReadOnlyList<SaidRow<AcceptStatement>> All { get; } = [SaidRows<AcceptStatement>.Of(AcceptDetails.By)];
}
