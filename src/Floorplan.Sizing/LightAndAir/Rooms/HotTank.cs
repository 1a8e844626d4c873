using Floorplan.Language.Quantities;
using Floorplan.Language.Text;
using Floorplan.Model.Stations;

namespace Floorplan.Sizing.LightAndAir.Rooms;

/// <summary>
/// A tank of hot water that product goes through, or a kettle or vat by its name: it stands open and steams.
/// </summary>
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
           where station.Role == StationRole.Station
               && (Water.Supply.HoldsWater(station) || station.Batch is not null || IsHotByName(station))
           let uses = facts.Uses.By(station, NeedKind.HotWater).ToList()
           where uses.Count == 0 || !uses.TrueForAll(u => u.Written?.IsToFill == true)
           let hottest = uses
               .Where(u => u.At is { Unit.Kind: QuantityKind.Temperature, Base: >= Steams }).MaxBy(u => u.At!.Value.Base)
           let boils = hottest is null ? Boiling(station) : null
           where hottest is not null || boils is not null
           select new HotTank(
               station, Math.Min(Boils, hottest?.At!.Value.Base ?? Boils), hottest?.Span ?? boils!.Span),
    ];

    private static bool IsHotByName(Station station)
        => Says(station, "vat") || Says(station, "scald") || Says(station, "kettle") || Says(station, "blanch");

    /// <summary>The power of a kettle, cooker or blancher that heats its own water.</summary>
    private static Need? Boiling(Station station)
        => Says(station, "kettle") || Says(station, "cooker") || Says(station, "blanch") || Says(station, "boil")
            ? station.Needs.FirstOrDefault(n => n.Kind is NeedKind.Power or NeedKind.Steam)
            : null;

    private static bool Says(Station station, string word) => station.Label.Contains(word, StringComparison.OrdinalIgnoreCase);
}
