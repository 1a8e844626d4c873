using Floorplan.Language.Syntax.Values;
using Floorplan.Language.Words.Terms;

namespace Floorplan.Language.Details.Services;

/// <summary>What an outlet may say.</summary>
public static class OutletDetails
{
    public static Detail<TermSyntax<FaultGuard>> Guard { get; } =
        TermDetail.OneOf<FaultGuard>("what cuts it off when current leaks to earth");

    public static IReadOnlyList<Detail> All { get; } =
        [ServiceDetails.Place, ServiceDetails.Height, ElectricDetails.Phases, Guard, ElectricDetails.Sealed, ElectricDetails.Circuit];
}
