using Floorplan.Sizing.Cold.Loads;
using Floorplan.Sizing.Cold.Products;
using Xunit;

namespace Floorplan.Tests.Sizing.Cold;

public sealed class ProductHeatTests
{
    /// <summary>
    /// Choi and Okos (1986) at 5 C, worked out apart from this program (engineering reference, C11): specific heat, conductivity, density.
    /// </summary>
    [Theory]
    [InlineData(66.0, 18.6, 15.1, 0, 0.8, 3.42, 0.454, 1037)]
    [InlineData(58.2, 17.5, 24.1, 0, 0.8, 3.25, 0.419, 1027)]
    [InlineData(81.2, 17.8, 0.7, 0, 1.2, 3.74, 0.520, 1050)]
    [InlineData(87.7, 3.3, 3.7, 4.7, 0.7, 3.88, 0.542, 1025)]
    public void Parts_make_the_figures_of_a_food(
        double water, double protein, double fat, double carbohydrate, double ash, double heat, double conductivity, double density)
    {
        var food = new FoodParts(water / 100, protein / 100, fat / 100, carbohydrate / 100, ash / 100);

        Assert.Equal(heat, food.SpecificHeat(5), 0.01);
        Assert.Equal(conductivity, food.Conductivity(5), 0.001);
        Assert.Equal(density, food.Density(5), 1.0);
    }

    /// <summary>ASHRAE 2006, chapter 9, table 3, carrot: 87.79 % water, 3.92 kJ/kgK; and 293 kJ/kg, which is 334 times the water.</summary>
    [Theory]
    [InlineData(0.8779, 3.92, 293)]
    [InlineData(0.9069, 4.01, 303)]
    [InlineData(0.9215, 4.02, 308)]
    [InlineData(0.9589, 4.09, 320)]
    [InlineData(0.9601, 4.09, 321)]
    [InlineData(0.7596, 3.62, 254)]
    [InlineData(0.5858, 3.17, 196)]
    [InlineData(0.9181, 3.99, 307)]
    public void Water_makes_the_heat_of_vegetables(double water, double above, double latent)
    {
        Assert.Equal(latent, FoodParts.Latent(water), 0.6);
        Assert.Equal(above, FoodParts.QuickSpecificHeat(1 - water), above * 0.025);
    }

    /// <summary>Geankoplis, appendix A.4: fresh poultry 3.31 kJ/kgK; NZIFST: fish 3.18, milk 3.9; the last word is not known.</summary>
    [Theory]
    [InlineData("birds", 3.31)]
    [InlineData("fish", 3.18)]
    [InlineData("milk cans", 3.9)]
    [InlineData("carrots", 3.92)]
    [InlineData("parcels", 3.59)]
    public void A_product_is_known_by_its_word(string word, double above) => Assert.Equal(above, ProductHeats.Of(word).Above);

    /// <summary>A published exercise: 100 carcasses of 200 kg from 30 to 5 C in 8 h, 3.2 kJ/kgK: 55.6 kW.</summary>
    [Fact]
    public void Carcasses_of_a_published_exercise()
    {
        var beef = ProductHeats.Of("beef") with { Above = 3.2 };

        Assert.Equal(55_600, 100 * 200 * beef.PerKilogram(30, 5) * 1000 / (8 * 3600), 100.0);
    }

    /// <summary>A published chiller: 500 birds an hour of 2.2 kg, 3.54 kJ/kgK, 15 to 3 C: 12.98 kW; 210 kJ/min gained beside
    /// warm 1.971 kg/s of water by 2 K.</summary>
    [Fact]
    public void A_bird_chiller_of_a_published_exercise()
    {
        var bird = ProductHeats.Of("birds") with { Above = 3.54 };

        double heat = 500 * 2.2 / 3600 * bird.PerKilogram(15, 3);

        Assert.Equal(12.98, heat, 0.005);
        Assert.Equal(1.971, (heat + (210 / 60.0)) / (4.18 * 2), 0.001);
    }

    /// <summary>FAO Fisheries Technical Paper 340, 8.1: 35 000 kg with 5.5 kcal each in a day are 8020 kcal/h.</summary>
    [Fact]
    public void Fish_of_a_published_store() => Assert.Equal(8020, ColdStore.OfProduct(35_000, 5.5 * 4.1868) / 1.163, 5.0);

    [Fact]
    public void Frozen_food_gives_off_the_heat_of_its_ice_too()
    {
        var fish = ProductHeats.Of("fish");

        Assert.Equal(fish.PerKilogram(20, -2) + fish.Latent + fish.PerKilogram(-2, -18), fish.PerKilogram(20, -18), 1e-9);
        Assert.Equal(0, fish.PerKilogram(4, 10));
    }
}
