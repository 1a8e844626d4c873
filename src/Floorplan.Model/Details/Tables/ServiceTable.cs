using Floorplan.Language.Details;
using Floorplan.Language.Details.Services;
using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax.Statements.Services;
using Floorplan.Language.Syntax.Values;
using Floorplan.Language.Words.Terms;

namespace Floorplan.Model.Details.Tables;

/// <summary>
/// All that service points may say. Details that a statement does not have are never said in it, so that one table serves all.
/// </summary>
internal static class ServiceTable
{
    public static IReadOnlyList<SaidRow<ServiceStatement>> All { get; } =
    [
        SaidRows<ServiceStatement>.Of(HoseDetails.On),
        SaidRows<ServiceStatement>.Of(ServiceDetails.Wall),
        SaidRows<ServiceStatement>.Place(ServiceDetails.Place),
        SaidRows<ServiceStatement>.Of(ServiceDetails.Height),
        SaidRows<ServiceStatement>.Mark(WaterDetails.Cold),
        SaidRows<ServiceStatement>.Mark(WaterDetails.Hot),
        SaidRows<ServiceStatement>.Of(WaterDetails.Size),
        Term("form", DrainDetails.Form),
        SaidRows<ServiceStatement>.Of(DrainDetails.Size),
        SaidRows<ServiceStatement>.Of(DrainDetails.OutletBelow),
        SaidRows<ServiceStatement>.Of(DrainDetails.RunsTo),
        SaidRows<ServiceStatement>.Of(HoseDetails.Length),
        Term("through", HoleDetails.Through),
        SaidRows<ServiceStatement>.Size(HoleDetails.Size),
        Term("phases", ElectricDetails.Phases),
        Term("guard", OutletDetails.Guard),
        Term("form", HeaterDetails.Form),
        Term("switching", SwitchDetails.Switching),
        SaidRows<ServiceStatement>.Mark(ElectricDetails.Sealed),
        SaidRows<ServiceStatement>.Of(ElectricDetails.Circuit),
        Mark(GuardDetails.VacuumBreaker),
        Mark(GuardDetails.BackflowPreventer),
        Rating(WaterDetails.Rating),
        Rating(DrainDetails.Rating),
        Rating(HoseDetails.Rating),
        Rating(HeaterDetails.Rating),
        Rating(ElectricDetails.Rating),
    ];

    private static SaidRow<ServiceStatement, string> Term<T>(string called, Detail<TermSyntax<T>> detail)
        where T : struct, Enum => SaidRows<ServiceStatement>.Part<TermSyntax<T>, string>(
            called,
            detail,
            t => TermWord.Of(t.Value),
            (word, _) => word);

    private static SaidRow<ServiceStatement, bool> Mark<T>(Detail<TermSyntax<T>> detail)
        where T : struct, Enum => SaidRows<ServiceStatement>.Part<TermSyntax<T>, bool>(
            detail.Word,
            detail,
            _ => true,
            (_, _) => SaidThings.Yes);

    private static SaidRow<ServiceStatement, IReadOnlyList<RatingSyntax>> Rating(Detail<RatingSyntax> detail)
        => SaidRows<ServiceStatement>.All(
        detail, r => r, (r, units) => string.Join(' ', r.Amounts.Select(a => QuantityText.Of(a.Value, units))), "rated");
}
