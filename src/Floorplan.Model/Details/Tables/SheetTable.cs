using Floorplan.Language.Details;
using Floorplan.Language.Syntax.Statements;
using Floorplan.Language.Syntax.Values;

namespace Floorplan.Model.Details.Tables;

/// <summary>All that a <c>sheet</c> statement may say.</summary>
internal static class SheetTable
{
    public static IReadOnlyList<SaidRow<SheetStatement>> All { get; } =
    [
        SaidRows<SheetStatement>.Of(SheetDetails.Paper),
        SaidRows<SheetStatement>.Part<NumberSyntax, decimal>(
            "scale",
            SheetDetails.Scale,
            n => n.Value,
            (n, _) => FormattableString.Invariant($"1:{n:0.##}")),
        SaidRows<SheetStatement>.Part<IReadOnlyList<WordSyntax>, string>(
            "shows",
            SheetDetails.Shows,
            w => string.Join(", ", w.Select(x => x.Text)),
            (text, _) => text),
    ];
}
