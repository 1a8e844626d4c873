using Floorplan.Language.Quantities;
using Floorplan.Model.Stations;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Uses;

/// <summary>One service that comes from outside or leaves to it, with every use open or running at once.</summary>
/// <param name="Uses">How many things use it.</param>
/// <param name="Together">What they take together; null when none says an amount, and for drains.</param>
/// <param name="NotSaid">How many of the uses say no amount.</param>
public sealed record Connection(NeedKind Kind, Figure Uses, Figure? Together, int NotSaid)
{
    private static readonly Source Own = new("every use at once, as the plan says it; what is used together is less", Origin.OwnAssumption);

    private static readonly (NeedKind Kind, string Name)[] Kinds =
    [
        (NeedKind.ColdWater, "cold water"),
        (NeedKind.HotWater, "hot water"),
        (NeedKind.Drain, "drain"),
        (NeedKind.Power, "power"),
        (NeedKind.CompressedAir, "compressed air"),
        (NeedKind.Steam, "steam"),
    ];

    /// <summary>For tables: <c>Cold water</c>.</summary>
    public string Name => Kinds.First(k => k.Kind == Kind).Name is var name ? char.ToUpperInvariant(name[0]) + name[1..] : "";

    /// <summary>Services that nothing uses are left out.</summary>
    public static IReadOnlyList<Connection> Of(PlanFacts facts)
    {
        var found = new List<Connection>();
        foreach (var (kind, name) in Kinds)
        {
            List<ServiceUse> uses = [.. facts.Uses.Of(kind)];
            if (uses.Count > 0)
            {
                found.Add(
                    new Connection(kind, Count(name, uses, facts), Sum(kind, name, uses, facts), kind == NeedKind.Drain
                        ? 0
                        : uses.Count(u => u.Amount is null)));
            }
        }

        return found;
    }

    private static Figure Count(string name, List<ServiceUse> uses, PlanFacts facts) => new()
    {
        Name = "uses of " + name,
        Of = Figure.WholePlan,
        Value = uses.Count,
        Kind = QuantityKind.Count,
        Text = QuantityText.Plain(uses.Count),
        Inputs = [.. uses.Select(u => FigureInput.Said(u.ById, UseText.WithKind(u, facts.Plan.Units), u.Span))],
        Formula = "number of things that use it",
        Substituted = string.Join(" + ", uses.Select(u => u.ById)),
        Source = Own,
    };

    private static Figure? Sum(NeedKind kind, string name, List<ServiceUse> uses, PlanFacts facts)
    {
        if (kind == NeedKind.Power)
        {
            return facts.Power.Together;
        }

        Measure? measure = kind switch
        {
            NeedKind.ColdWater or NeedKind.HotWater => Measure.Flow,
            NeedKind.CompressedAir => Measure.AirFlow,
            _ => null,
        };
        var units = facts.Plan.Units;
        List<ServiceUse> said = [.. uses.Where(u => u.Amount is { Unit.Kind: QuantityKind.Flow or QuantityKind.AirFlow })];

        // What a heater heats is drawn from the cold main.
        bool heats = kind == NeedKind.ColdWater && uses.Exists(u => u.Point is Model.Services.Heater);
        List<ServiceUse> heated = heats
            ? [.. facts.Uses.Of(NeedKind.HotWater).Where(u => u.Amount is { Unit.Kind: QuantityKind.Flow })]
            : [];
        said.AddRange(heated);
        if (measure is not { } known || said.Count == 0)
        {
            return null;
        }

        double sum = said.Sum(u => u.Amount!.Value.Base);
        return new Figure
        {
            Name = name + ", all uses at once",
            Of = Figure.WholePlan,
            Value = sum,
            Kind = said[0].Amount!.Value.Unit.Kind,
            Text = QuantityText.Of(sum, known, units),
            Inputs = [.. said.Select(u => FigureInput.Said(u.ById, UseText.WithKind(u, units), u.Span))],
            Formula = heated.Count > 0
                ? "sum of the cold uses and of the hot uses that a heater of the plan heats"
                : "sum of the uses that say an amount",
            Substituted = string.Join(" + ", said.Select(u => QuantityText.Of(u.Amount!.Value, units))),
            Source = Own,
        };
    }
}
