using System.Globalization;

namespace Floorplan.Model;

/// <summary>Whose bodies a unit is laid out for; what the plan's <c>people</c> says.</summary>
/// <param name="Who">Women, men or both.</param>
/// <param name="Least">Of a hundred of them, this many are smaller than the smallest who is planned for.</param>
/// <param name="Most">Of a hundred of them, this many are smaller than the tallest who is planned for.</param>
public sealed record People(WhoWorks Who, double Least, double Most)
{
    /// <summary>From a 5th-percentile woman to a 95th-percentile man: usual in the trade.</summary>
    public static People Usual { get; } = new(WhoWorks.WomenAndMen, 5, 95);

    /// <summary>As a plan writes it: <c>women 10 to 90 %</c>.</summary>
    public string Text
        => (Who switch { WhoWorks.Women => "women ", WhoWorks.Men => "men ", _ => "" })
            + string.Create(CultureInfo.InvariantCulture, $"{Least:0.##} to {Most:0.##} %");
}

/// <summary>Whose bodies count.</summary>
public enum WhoWorks
{
    WomenAndMen,
    Women,
    Men,
}
