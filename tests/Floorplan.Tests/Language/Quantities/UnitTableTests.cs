using Floorplan.Language.Quantities;
using UnitsNet;
using Xunit;

namespace Floorplan.Tests.Language.Quantities;

/// <summary>Every factor against an independent one: UnitsNet.</summary>
public class UnitTableTests
{
    /// <summary>NIST Special Publication 811 (2008), appendix B.8: horsepower (550 ft lbf/s). UnitsNet rounds it to 745.69.</summary>
    private const double HorsepowerInWatts = 745.6999;

    private static readonly Dictionary<string, Func<double, double>> Independent = new()
    {
        ["L"] = x => Volume.FromLiters(x).CubicMeters,
        ["l"] = x => Volume.FromLiters(x).CubicMeters,
        ["mL"] = x => Volume.FromMilliliters(x).CubicMeters,
        ["m3"] = x => Volume.FromCubicMeters(x).CubicMeters,
        ["gal"] = x => Volume.FromUsGallons(x).CubicMeters,
        ["ft3"] = x => Volume.FromCubicFeet(x).CubicMeters,
        ["L/min"] = x => VolumeFlow.FromLitersPerMinute(x).CubicMetersPerSecond,
        ["L/h"] = x => VolumeFlow.FromLitersPerHour(x).CubicMetersPerSecond,
        ["L/s"] = x => VolumeFlow.FromLitersPerSecond(x).CubicMetersPerSecond,
        ["m3/h"] = x => VolumeFlow.FromCubicMetersPerHour(x).CubicMetersPerSecond,
        ["gpm"] = x => VolumeFlow.FromUsGallonsPerMinute(x).CubicMetersPerSecond,
        ["gal/min"] = x => VolumeFlow.FromUsGallonsPerMinute(x).CubicMetersPerSecond,
        ["gal/h"] = x => VolumeFlow.FromUsGallonsPerHour(x).CubicMetersPerSecond,
        ["cfm"] = x => VolumeFlow.FromCubicFeetPerMinute(x).CubicMetersPerSecond,
        ["s"] = x => Duration.FromSeconds(x).Seconds,
        ["sec"] = x => Duration.FromSeconds(x).Seconds,
        ["min"] = x => Duration.FromMinutes(x).Seconds,
        ["h"] = x => Duration.FromHours(x).Seconds,
        ["kg"] = x => Mass.FromKilograms(x).Kilograms,
        ["g"] = x => Mass.FromGrams(x).Kilograms,
        ["lb"] = x => Mass.FromPounds(x).Kilograms,
        ["oz"] = x => Mass.FromOunces(x).Kilograms,
        ["t"] = x => Mass.FromTonnes(x).Kilograms,
        ["C"] = x => Temperature.FromDegreesCelsius(x).DegreesCelsius,
        ["F"] = x => Temperature.FromDegreesFahrenheit(x).DegreesCelsius,
        ["W"] = x => (double)Power.FromWatts((decimal)x).Watts,
        ["kW"] = x => (double)Power.FromKilowatts((decimal)x).Watts,
        ["hp"] = x => x * HorsepowerInWatts,
        ["Btu/h"] = x => (double)Power.FromBritishThermalUnitsPerHour((decimal)x).Watts,
        ["V"] = x => ElectricPotential.FromVolts(x).Volts,
        ["A"] = x => ElectricCurrent.FromAmperes(x).Amperes,
        ["lux"] = x => Illuminance.FromLux(x).Lux,
        ["lx"] = x => Illuminance.FromLux(x).Lux,
        ["lm"] = x => LuminousFlux.FromLumens(x).Lumens,
        ["fc"] = x => x * Area.FromSquareMeters(1).SquareFeet,
        ["%"] = x => Ratio.FromPercent(x).DecimalFractions,
        ["m2"] = x => Area.FromSquareMeters(x).SquareMeters,
        ["ft2"] = x => Area.FromSquareFeet(x).SquareMeters,
        ["bar"] = x => Pressure.FromBars(x).Pascals,
        ["kPa"] = x => Pressure.FromKilopascals(x).Pascals,
        ["psi"] = x => Pressure.FromPoundsForcePerSquareInch(x).Pascals,
        ["km/h"] = x => Speed.FromKilometersPerHour(x).MetersPerSecond,
        ["mph"] = x => Speed.FromMilesPerHour(x).MetersPerSecond,
        ["ft/s"] = x => Speed.FromFeetPerSecond(x).MetersPerSecond,
        ["m/s"] = x => Speed.FromMetersPerSecond(x).MetersPerSecond,
    };

    [Fact]
    public void Every_unit_has_an_independent_factor() =>
        Assert.Equal(Independent.Keys.Order(StringComparer.Ordinal), UnitTable.Units.Select(u => u.Symbol).Order(StringComparer.Ordinal));

    // Seven figures: the published horsepower has no more.
    [Theory]
    [InlineData(1)]
    [InlineData(140)]
    [InlineData(0.25)]
    public void Every_factor_agrees(double number) => Assert.All(UnitTable.Units, u =>
        Assert.InRange(Math.Abs(u.ToBase(number) - Independent[u.Symbol](number)), 0, 2e-7 * Math.Abs(u.ToBase(number))));

    [Theory]
    [InlineData("fish/h", 1.0 / 3600)]
    [InlineData("birds/min", 1.0 / 60)]
    [InlineData("kg/day", 1.0 / 86400)]
    public void Things_per_time_are_a_rate(string symbol, double perSecond)
        => Assert.Equal(perSecond, UnitTable.Rate(symbol)!.ToBase(1), 12);

    [Theory]
    [InlineData("litres", "L")]
    [InlineData("lbs", "lb")]
    [InlineData("GPM", "gpm")]
    [InlineData("m³", "m3")]
    public void Usual_other_names_are_known(string written, string symbol) => Assert.Equal(symbol, UnitTable.Find(written)!.Symbol);
}
