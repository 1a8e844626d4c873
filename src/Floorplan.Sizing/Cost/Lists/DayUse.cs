using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Cost.Lists;

/// <summary>What a day uses and throws away, where other subjects have worked it out.</summary>
/// <param name="Name">Of its rate.</param>
/// <param name="Kind">What its rate is counted in.</param>
/// <param name="Figures">Names of figures that are it; the first that there is counts.</param>
internal sealed record DayUse(string Name, RateKind Kind, IReadOnlyList<string> Figures)
{
    public static IReadOnlyList<DayUse> All { get; } =
    [
        new("water", RateKind.Volume, ["water a day"]),
        new("waste water", RateKind.Volume, ["waste water a day", "water a day"]),
        new("energy", RateKind.Energy, ["energy a day"]),
        new("ice", RateKind.Mass, ["ice that cools the product of a day"]),
        new("waste", RateKind.Mass, ["waste a day"]),
    ];

    /// <summary>Null where no subject has it.</summary>
    public Figure? In(IReadOnlyList<Figure> worked)
        => Figures.Select(name => worked.FirstOrDefault(f => f.Name == name && f.Of == Figure.WholePlan))
            .FirstOrDefault(f => f is not null);
}
