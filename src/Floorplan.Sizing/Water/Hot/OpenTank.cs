using Floorplan.Language.Quantities;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Water.Hot;

/// <summary>Heat that an open tank of hot water loses in still air of 60 °F.</summary>
internal static class OpenTank
{
    private const double WattsPerSquareMetre = InchPound.WattsPerBtuPerHour / InchPound.SquareMetresPerSquareFoot;

    /// <summary>Water in °F; Btu/h from a square foot of its surface, by vapour and radiation.</summary>
    private static readonly (double Fahrenheit, double Btu)[] Surface =
    [
        (60, 0), (90, 130), (100, 230), (110, 330), (120, 470), (130, 615), (140, 820), (150, 1040), (160, 1310), (170, 1615), (180, 2000),
        (190, 2450), (200, 3000), (210, 3600),
    ];

    /// <summary>The same from a square foot of a bare wall.</summary>
    private static readonly (double Fahrenheit, double Btu)[] Wall = [(60, 0), (130, 135), (140, 160), (150, 180), (160, 210)];

    public static Source Source { get; } = new("table of heat loss from open tanks in still air of 60 °F, after ASHRAE",
        Origin.FoundInPublicCopy);

    /// <summary>W/m2 of water surface.</summary>
    public static double FromSurface(double celsius) => Between(Surface, celsius) * WattsPerSquareMetre;

    /// <summary>W/m2 of bare wall.</summary>
    public static double FromWall(double celsius) => Between(Wall, celsius) * WattsPerSquareMetre;

    /// <summary>On straight lines between the rows, and on the last one beyond them.</summary>
    private static double Between((double Fahrenheit, double Btu)[] rows, double celsius)
    {
        if (!(celsius > InchPound.Celsius(rows[0].Fahrenheit)))
        {
            return 0;
        }

        int i = 1;
        while (i < rows.Length - 1 && celsius > InchPound.Celsius(rows[i].Fahrenheit))
        {
            i++;
        }

        var (from, to) = (rows[i - 1], rows[i]);
        double share = (celsius - InchPound.Celsius(from.Fahrenheit)) / InchPound.Celsius(32 + to.Fahrenheit - from.Fahrenheit);
        return from.Btu + (share * (to.Btu - from.Btu));
    }
}
