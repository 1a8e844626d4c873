namespace Floorplan.Language.Details.Services;

/// <summary>What a panel may say.</summary>
public static class PanelDetails
{
    public static IReadOnlyList<Detail> All { get; } = [ServiceDetails.Place, ServiceDetails.Height, ElectricDetails.Phases];
}
