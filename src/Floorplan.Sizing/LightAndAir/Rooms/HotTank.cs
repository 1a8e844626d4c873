using Floorplan.Language.Quantities;
using Floorplan.Language.Text;
using Floorplan.Model.Stations;

namespace Floorplan.Sizing.LightAndAir.Rooms;

/// <summary>A tank of hot water that product goes through: it stands open and steams.</summary>
/// <param name="Celsius">Of its water.</param>
/// <param name="Span">Where the plan says the temperature.</param>
public sealed record HotTank(Station Station, double Celsius, SourceSpan Span)
{
    /// <summary>Cooler water hardly steams, C; own assumption.</summary>
    private const double Steams = 40;

    /// <summary>Open water does not get hotter, C.</summary>
    private const double Boils = 100;

    /// <summary>Of its plan, m2; a lid and the rim are left out (own assumption).</summary>
    public double OpenArea => Station.Footprint.Area / 1e6;

    internal static IReadOnlyList<HotTank> Of(PlanFacts facts) =>
    [
        .. from station in facts.Plan.Stations
           where Water.Supply.HoldsWater(station) && station.Role == StationRole.Station
           where !facts.Uses.By(station, NeedKind.HotWater).All(u => u.Written?.IsToFill == true)
           let hottest = facts.Uses.By(station, NeedKind.HotWater)
               .Where(u => u.At is { Unit.Kind: QuantityKind.Temperature, Base: >= Steams }).MaxBy(u => u.At!.Value.Base)
           where hottest is not null
           select new HotTank(station, Math.Min(Boils, hottest.At!.Value.Base), hottest.Span),
    ];
}
