using Floorplan.Language.Details;
using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax.Statements;

namespace Floorplan.Model.Details.Tables;

/// <summary>All that a service point may say.</summary>
internal static class ServiceTable
{
    public static IReadOnlyList<SaidRow<ServiceStatement>> All { get; } =
    [
        SaidRows<ServiceStatement>.Of(ServiceDetails.On),
        SaidRows<ServiceStatement>.Of(ServiceDetails.Wall),
        SaidRows<ServiceStatement>.Place(ServiceDetails.Place),
        SaidRows<ServiceStatement>.Of(ServiceDetails.Height),
        SaidRows<ServiceStatement>.Of(ServiceDetails.Size),
        SaidRows<ServiceStatement>.Size(ServiceDetails.HoleSize),
        SaidRows<ServiceStatement>.Of(ServiceDetails.OutletBelow),
        SaidRows<ServiceStatement>.Of(ServiceDetails.RunsTo),
        SaidRows<ServiceStatement>.Of(ServiceDetails.Circuit),
        SaidRows<ServiceStatement>.Mark(ServiceDetails.VacuumBreaker),
        SaidRows<ServiceStatement>.Mark(ServiceDetails.BackflowPreventer),
        SaidRows<ServiceStatement>.All(ServiceDetails.Word, w => w.Text, (word, _) => word, "is"),
        SaidRows<ServiceStatement>.All(
            ServiceDetails.Rating,
            r => r,
            (r, units) => string.Join(' ', r.Amounts.Select(a => QuantityText.Of(a.Value, units)).Concat(r.Words.Select(w => w.Text))),
            "rated"),
    ];
}
