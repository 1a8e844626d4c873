using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax.Values;
using Floorplan.Language.Words.Terms;

namespace Floorplan.Language.Details.Services;

/// <summary>What a heater may say.</summary>
public static class HeaterDetails
{
    public static Detail<TermSyntax<HeaterForm>> Form { get; } =
        TermDetail.OneOf<HeaterForm>("whether it heats water as it flows, or keeps it hot");

    public static Detail<RatingSyntax> Rating { get; } = Ratings.Of(
        [
            QuantityKind.Power, QuantityKind.Voltage, QuantityKind.Current, QuantityKind.Volume, QuantityKind.Temperature,
            QuantityKind.Flow, QuantityKind.Pressure],
        "9 kW 150 L", "12 kW 150 L");

    public static IReadOnlyList<Detail> All { get; } =
        [Form, ServiceDetails.Place, ServiceDetails.Height, ElectricDetails.Phases, ElectricDetails.Circuit];
}
