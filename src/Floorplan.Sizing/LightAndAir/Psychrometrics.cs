namespace Floorplan.Sizing.LightAndAir;

/// <summary>
/// Damp air, after ASHRAE Fundamentals 2017, chapter 1 (equations from memory, held against its printed values). Temperatures in C,
/// pressures in Pa, humidity as a share from 0 to 1, water in kg for each kg of dry air.
/// </summary>
internal static class Psychrometrics
{
    /// <summary>Standard pressure at sea level.</summary>
    public const double SeaLevel = 101_325;

    private const double Kelvin = 273.15;

    /// <summary>Where the equations are used; a file may say anything.</summary>
    private const double Coldest = -100;
    private const double Hottest = 100;

    /// <summary>Standard pressure at a height above the sea in m.</summary>
    public static double Pressure(double metres) => SeaLevel * Math.Pow(Math.Max(0, 1 - (2.25577e-5 * metres)), 5.2559);

    /// <summary>Pressure of vapour in air that can take no more; over ice below 0 C, over water from there on.</summary>
    public static double Saturation(double celsius)
    {
        double t = Math.Clamp(celsius, Coldest, Hottest) + Kelvin;
        return Math.Exp(t < Kelvin
            ? (-5674.5359 / t) + 6.3925247 + (t * (-9.677843e-3 + (t * (6.2215701e-7 + (t * (2.0747825e-9 + (t * -9.484024e-13)))))))
                + (4.1635019 * Math.Log(t))
            : (-5800.2206 / t) + 1.3914993 + (t * (-4.8640239e-2 + (t * (4.1764768e-5 + (t * -1.4452093e-8)))))
                + (6.5459673 * Math.Log(t)));
    }

    /// <summary>Water in air of that temperature and humidity.</summary>
    public static double Water(double celsius, double humidity, double pressure = SeaLevel)
        => OfVapour(Math.Clamp(humidity, 0, 1) * Saturation(celsius), pressure);

    /// <summary>Water in air whose wet thermometer shows <paramref name="wet"/>; above freezing.</summary>
    public static double WaterOfWetBulb(double celsius, double wet, double pressure = SeaLevel)
    {
        double full = Water(wet, 1, pressure);
        return (((2501 - (2.326 * wet)) * full) - (1.006 * (celsius - wet))) / (2501 + (1.86 * celsius) - (4.186 * wet));
    }

    /// <summary>Humidity of air with that much water in it.</summary>
    public static double Humidity(double celsius, double water, double pressure = SeaLevel)
        => pressure * water / ((0.621945 + water) * Saturation(celsius));

    /// <summary>Heat in damp air above that of dry air at 0 C, in kJ for each kg of dry air.</summary>
    public static double Heat(double celsius, double water) => (1.006 * celsius) + (water * (2501 + (1.86 * celsius)));

    /// <summary>In m3 for each kg of dry air.</summary>
    public static double Volume(double celsius, double water, double pressure = SeaLevel)
        => 287.042 * (celsius + Kelvin) * (1 + (1.607858 * water)) / pressure;

    /// <summary>Of the damp air with its water, in kg/m3.</summary>
    public static double Density(double celsius, double water, double pressure = SeaLevel)
        => (1 + water) / Volume(celsius, water, pressure);

    /// <summary>Where water begins to fall out of air; the coldest that the equations reach for dry air.</summary>
    public static double DewPoint(double celsius, double humidity) => DewPointOfVapour(Math.Clamp(humidity, 0, 1) * Saturation(celsius));

    /// <summary>Where air with that much water in it begins to lose it.</summary>
    public static double DewPointOfWater(double water, double pressure = SeaLevel)
        => DewPointOfVapour(pressure * water / (0.621945 + water));

    private static double DewPointOfVapour(double vapour)
    {
        double low = Coldest;
        double high = Hottest;
        for (int i = 0; i < 60; i++)
        {
            double middle = (low + high) / 2;
            (low, high) = Saturation(middle) < vapour ? (middle, high) : (low, middle);
        }

        return (low + high) / 2;
    }

    /// <summary>Steam alone has no end; 99 % of the pressure is far above any room.</summary>
    private static double OfVapour(double vapour, double pressure)
    {
        double bound = Math.Min(vapour, 0.99 * pressure);
        return 0.621945 * bound / (pressure - bound);
    }
}
