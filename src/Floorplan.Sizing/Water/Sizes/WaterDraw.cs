using Floorplan.Language.Quantities;
using Floorplan.Model.Services;
using Floorplan.Model.Stations;
using Floorplan.Sizing.Uses;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Water.Sizes;

/// <summary>One thing that draws water.</summary>
/// <param name="Id">Of the station or the hose.</param>
/// <param name="Units">Of a sink; null for what draws steadily.</param>
/// <param name="Cold">m3/s while it draws; 0 for a sink, whose flow follows from its units.</param>
/// <param name="Hot">The same of hot water.</param>
/// <param name="HotAt">°C that the hot water is to have; null when not said.</param>
/// <param name="Inputs">Where the flows come from.</param>
public sealed record WaterDraw(
    string Id, Station? Station, Pipes.FixtureUnits? Units, double Cold, double Hot, double? HotAt, IReadOnlyList<FigureInput> Inputs)
{
    /// <summary>5 US gallons a minute.</summary>
    public const double HoseFlow = 5 * InchPound.CubicMetresPerGallon / 60;

    /// <summary>0.8 US gallons a minute.</summary>
    public const double HandTapFlow = 0.8 * InchPound.CubicMetresPerGallon / 60;

    public static Source HoseSource { get; } =
        new("IPC 2018 Table 604.3, sillcock 5 gpm; a hose draws as long as it is open", Origin.FoundInPublicCopy, Force.ModelCode);

    public static Source HandTapSource { get; } = new("IPC 2018 Table 604.3, lavatory 0.8 gpm", Origin.FoundInPublicCopy, Force.ModelCode);

    public double Flow => Cold + Hot;

    /// <summary>m3/s of <see cref="Cold"/> and of <see cref="Hot"/> that runs only until the thing is full.</summary>
    public (double Cold, double Hot) ToFill { get; init; }

    /// <summary>m3/s that runs all the time that the thing is in use.</summary>
    public double RunsOn => Flow - ToFill.Cold - ToFill.Hot;

    /// <inheritdoc cref="RunsOn"/>
    public double HotRunsOn => Hot - ToFill.Hot;

    public bool IsHose => Station is null;

    /// <summary>How many hoses are open at a time: one a person, and one where the plan counts nobody.</summary>
    /// <param name="draws">Those that count.</param>
    public static int HosesAtOnce(PlanFacts facts, IEnumerable<WaterDraw> draws)
        => Math.Min(draws.Count(d => d.IsHose), Math.Max(1, (int)facts.Crew.All.Value));

    /// <summary>Stations in the order of their numbers, then hoses. What takes water and says no flow is in it with a flow of 0.</summary>
    public static IReadOnlyList<WaterDraw> Of(PlanFacts facts)
    {
        var draws = new List<WaterDraw>();
        foreach (var uses in facts.Uses.All.Where(u => u.Kind is NeedKind.ColdWater or NeedKind.HotWater).GroupBy(u => u.ById))
        {
            var first = uses.First();
            if (first.Station is { } station)
            {
                draws.Add(OfStation(station, [.. uses], facts.Plan.Units));
            }
            else if (first.Point is Hose hose)
            {
                bool cold = uses.Any(u => u.Kind == NeedKind.ColdWater);
                draws.Add(new WaterDraw(
                    hose.Id, null, null, cold ? HoseFlow : 0, cold ? 0 : HoseFlow, null,
                    [FigureInput.Taken("flow of " + hose.Id, QuantityText.Of(HoseFlow, Measure.Flow, facts.Plan.Units), HoseSource)]));
            }
        }

        return draws;
    }

    private static WaterDraw OfStation(Station station, IReadOnlyList<ServiceUse> uses, UnitSystem units)
    {
        bool isFixture = station.Role == StationRole.Sink && !station.IsSterilizer && uses.All(u => u.Amount is null);
        var said = uses.Where(u => u.Amount is { Unit.Kind: QuantityKind.Flow }).ToList();
        return new WaterDraw(
            station.Id, station, isFixture ? Pipes.FixtureUnits.Of(station) : null, Sum(NeedKind.ColdWater), Sum(NeedKind.HotWater),
            uses.Where(u => u.Kind == NeedKind.HotWater && u.At is { Unit.Kind: QuantityKind.Temperature })
                .Select(u => (double?)u.At!.Value.Base).FirstOrDefault(),
            [.. said.Select(u => FigureInput.Said("flow of " + station.Id, UseText.WithKind(u, units), u.Span))])
        {
            ToFill = (Sum(NeedKind.ColdWater, true), Sum(NeedKind.HotWater, true)),
        };

        double Sum(NeedKind kind, bool fills = false)
            => said.Where(u => u.Kind == kind && (!fills || u.Written?.IsToFill == true)).Sum(u => u.Amount!.Value.Base);
    }
}
