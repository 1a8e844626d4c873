using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax;
using Floorplan.Language.Text;
using Xunit;

namespace Floorplan.Tests.Language.Quantities;

/// <summary>How quantities are printed. Factors are held against UnitsNet, an independent library.</summary>
public class QuantityTextTests
{
    public static TheoryData<Measure, UnitSystem> Measures
    {
        get
        {
            var all = new TheoryData<Measure, UnitSystem>();
            foreach (var measure in Enum.GetValues<Measure>())
            {
                all.Add(measure, UnitSystem.Metric);
                all.Add(measure, UnitSystem.Feet);
            }

            return all;
        }
    }

    // Worked by hand with the factors of NIST Special Publication 811 (2008), appendix B.
    [Theory]
    [InlineData(Measure.Area, 13.4, "13.4 m²", "144 sq ft")]
    [InlineData(Measure.Volume, 32.1, "32.1 m³", "1134 cu ft")]
    [InlineData(Measure.Liquid, 0.15, "150 L", "39.6 gal")]
    [InlineData(Measure.Flow, 0.0002, "12 L/min", "3.17 gpm")]
    [InlineData(Measure.AirFlow, 0.083333333, "300 m³/h", "177 cfm")]
    [InlineData(Measure.AirChanges, 6.0 / 3600, "6 changes/h", "6 changes/h")]
    [InlineData(Measure.Mass, 12.5, "12.5 kg", "27.6 lb")]
    [InlineData(Measure.Mass, 1400.4, "1400 kg", "3087 lb")]
    [InlineData(Measure.MassFlow, 10.0 / 3600, "10 kg/h", "22 lb/h")]
    [InlineData(Measure.Temperature, 82, "82 °C", "180 °F")]
    [InlineData(Measure.Temperature, 0, "0 °C", "32 °F")]
    [InlineData(Measure.Temperature, -18, "-18 °C", "-0.4 °F")]
    [InlineData(Measure.TemperatureDifference, 10, "10 K", "18 °F")]
    [InlineData(Measure.Power, 750, "0.75 kW", "0.75 kW")]
    [InlineData(Measure.Heat, 2000, "2 kW", "6824 Btu/h")]
    [InlineData(Measure.Energy, 9e6, "2.5 kWh", "2.5 kWh")]
    [InlineData(Measure.Voltage, 230, "230 V", "230 V")]
    [InlineData(Measure.Current, 16, "16 A", "16 A")]
    [InlineData(Measure.Illuminance, 540, "540 lux", "50.2 fc")]
    [InlineData(Measure.Pressure, 300_000, "3 bar", "43.5 psi")]
    [InlineData(Measure.Speed, 1.5, "1.5 m/s", "4.9 ft/s")]
    [InlineData(Measure.SurfacePressure, 71_820, "71.8 kPa", "1500 lb/sq ft")]
    [InlineData(Measure.WindSpeed, 44.704, "44.7 m/s", "100 mph")]
    [InlineData(Measure.Force, 4448.2216, "4.45 kN", "1000 lbf")]
    [InlineData(Measure.Ratio, 0.0125, "1.25 %", "1.25 %")]
    [InlineData(Measure.Ratio, 0.11356, "11.4 %", "11.4 %")]
    public void Each_measure_in_the_units_of_the_plan(Measure measure, double value, string metric, string feet)
    {
        Assert.Equal(metric, QuantityText.Of(value, measure, UnitSystem.Metric));
        Assert.Equal(feet, QuantityText.Of(value, measure, UnitSystem.Feet));
        Assert.Equal(metric == feet ? metric : $"{metric} ({feet})", QuantityText.Both(value, measure));
    }

    [Theory]
    [InlineData(0.9, "0.9 kg")]
    [InlineData(0.05, "0.05 kg")]
    [InlineData(0.1234, "0.12 kg")]
    [InlineData(0, "0 kg")]
    [InlineData(-0.0000001, "0 kg")]
    [InlineData(99.96, "100 kg")]
    [InlineData(3499.6, "3500 kg")]
    public void Small_numbers_keep_two_figures_and_large_ones_are_whole(double kilograms, string text) =>
        Assert.Equal(text, QuantityText.Of(kilograms, Measure.Mass, UnitSystem.Metric));

    /// <summary>The units of the language are held against UnitsNet in <see cref="UnitTableTests"/>.</summary>
    [Theory]
    [MemberData(nameof(Measures))]
    public void What_goes_into_a_plan_is_read_as_what_was_meant(Measure measure, UnitSystem units)
    {
        if (PrintedUnits.Of(measure, units).Written is null)
        {
            Assert.Throws<ArgumentException>(() => QuantityText.Written(1, measure, units));
            return;
        }

        double value = PrintedUnits.Of(measure, units) is { } unit ? (40 - unit.Zero) * unit.Size : 0;
        string text = QuantityText.Written(value, measure, units);
        var tree =
            SyntaxTree.Parse(new SourceText($"limit some-rule {text} \"agreed\"\n", "test"), units == UnitSystem.Metric
                ? UnitSystem.Feet
                : UnitSystem.Metric);
        Assert.Empty(tree.Diagnostics);
        var read = Assert.IsType<Floorplan.Language.Syntax.Statements.LimitStatement>(Assert.Single(tree.Statements)).Quantity!.Value;
        Assert.Equal(value, read.Base, Math.Abs(value) * 1e-9);
    }

    /// <summary>What no statement takes, so that the table of units does not hold it.</summary>
    [Fact]
    public void Loads_and_differences_agree_with_independent_factors()
    {
        Assert.Equal(QuantityText.Plain(UnitsNet.LinearDensity.FromKilogramsPerMeter(50).PoundsPerFoot, 1)
            + " lb/ft", QuantityText.Of(50, Measure.LineLoad, UnitSystem.Feet));
        Assert.Equal(QuantityText.Plain(UnitsNet.AreaDensity.FromKilogramsPerSquareMeter(500).KilogramsPerSquareMeter / 4.88242764, 0)
            + " lb/sq ft", QuantityText.Of(500, Measure.FloorLoad, UnitSystem.Feet));
        Assert.Equal(QuantityText.Plain(UnitsNet.TemperatureDelta.FromDegreesCelsius(7).DegreesFahrenheit, 1)
            + " °F", QuantityText.Of(7, Measure.TemperatureDifference, UnitSystem.Feet));
    }

    [Theory]
    [InlineData("60", "C", "60 °C", "140 °F")]
    [InlineData("0.9", "kg", "0.9 kg", "2 lb")]
    [InlineData("5", "lb", "2.3 kg", "5 lb")]
    [InlineData("40", "gal", "151 L", "40 gal")]
    [InlineData("8", "L/min", "8 L/min", "2.11 gpm")]
    [InlineData("230", "V", "230 V", "230 V")]
    [InlineData("1.5", "hp", "1.5 hp", "1.5 hp")]
    [InlineData("6", "kW", "6 kW", "6 kW")]
    [InlineData("12000", "Btu/h", "3.52 kW", "12000 Btu/h")]
    [InlineData("90", "min", "90 min", "90 min")]
    [InlineData("50", "m2", "50 m²", "538 sq ft")]
    public void What_the_plan_says_stays_as_written_where_the_units_fit(string number, string unit, string metric, string feet)
    {
        var quantity = new Quantity(decimal.Parse(number, System.Globalization.CultureInfo.InvariantCulture), UnitTable.Find(unit)!);
        Assert.Equal(metric, QuantityText.Of(quantity, UnitSystem.Metric));
        Assert.Equal(feet, QuantityText.Of(quantity, UnitSystem.Feet));
    }

    [Fact]
    public void Air_and_rates_of_weight_too()
    {
        Assert.Equal("177 cfm", QuantityText.Of(new Quantity(300, UnitTable.Find("m3/h")!), UnitSystem.Feet, Measure.AirFlow));
        Assert.Equal("300 m³/h", QuantityText.Of(new Quantity(300, UnitTable.Find("m3/h")!), UnitSystem.Metric, Measure.AirFlow));
        Assert.Equal("110 lb/day", QuantityText.Of(new Quantity(50, UnitTable.Rate("kg/day")!), UnitSystem.Feet));
        Assert.Equal("60 birds/h", QuantityText.Of(new Quantity(60, UnitTable.Rate("birds/h")!), UnitSystem.Feet));
    }

    [Theory]
    [InlineData(40, "40 s")]
    [InlineData(119, "119 s")]
    [InlineData(120, "2 min")]
    [InlineData(5400, "90 min")]
    [InlineData(16200, "4.5 h")]
    public void Times(double seconds, string text) => Assert.Equal(text, QuantityText.Time(seconds));

    [Fact]
    public void Counts_rates_money()
    {
        Assert.Equal("1 hand sink", QuantityText.Count(1, "hand sink"));
        Assert.Equal("3 benches", QuantityText.Count(3, "bench", "benches"));
        Assert.Equal("118 fish/h", QuantityText.Rate(118.4 / 3600, "fish"));
        Assert.Equal("4.50", QuantityText.Money(4.5));
    }

    [Theory]
    [InlineData(0, UnitSystem.Metric, "±0")]
    [InlineData(-0.4, UnitSystem.Metric, "±0")]
    [InlineData(-23.6, UnitSystem.Metric, "-24")]
    [InlineData(12, UnitSystem.Metric, "+12")]
    [InlineData(-0.5, UnitSystem.Feet, "±0")]
    [InlineData(-23.8125, UnitSystem.Feet, "-7/8\"")]
    public void Levels_of_the_floor_have_their_sign(double millimetres, UnitSystem units, string text) =>
        Assert.Equal(text, QuantityText.Level(Length.FromMillimetres(millimetres), units));

    /// <summary>610 mm is 24.02 in: asking for 2'-0" would ask for too little.</summary>
    [Theory]
    [InlineData(610, UnitSystem.Feet, "2'-0 1/16\"")]
    [InlineData(609.6, UnitSystem.Feet, "2'-0\"")]
    [InlineData(600.2, UnitSystem.Metric, "601 mm")]
    [InlineData(600.0000004, UnitSystem.Metric, "600 mm")]
    public void A_size_to_ask_for_is_never_too_small(double millimetres, UnitSystem units, string text) =>
        Assert.Equal(text, QuantityText.Length(Tape.NoShorter(Length.FromMillimetres(millimetres), units), units));
}
