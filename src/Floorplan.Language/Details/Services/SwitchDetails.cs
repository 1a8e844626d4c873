using Floorplan.Language.Syntax.Values;
using Floorplan.Language.Words.Terms;

namespace Floorplan.Language.Details.Services;

/// <summary>What a switch may say.</summary>
public static class SwitchDetails
{
    public static Detail<TermSyntax<Switching>> Switching { get; } =
        TermDetail.OneOf<Switching>("from how many places its lamps are switched");

    public static IReadOnlyList<Detail> All { get; } =
        [ServiceDetails.Place, ServiceDetails.Height, Switching, ElectricDetails.Sealed, ElectricDetails.Circuit];
}
