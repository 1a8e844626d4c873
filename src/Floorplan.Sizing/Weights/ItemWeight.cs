using Floorplan.Language.Quantities;
using Floorplan.Model.Stations;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Weights;

/// <summary>What one thing weighs: as the plan says, or where it says a volume but no full weight, with that much water in it.</summary>
public sealed record ItemWeight(Station Station, Figure Empty, Figure Full)
{
    /// <summary>Of water, in kg/m3; offal is a little lighter and trimmings much, own assumption.</summary>
    public const double WaterDensity = 1000;

    private static readonly Source Said = new("as the plan says", Origin.CommonPractice);
    private static readonly Source Water = new("water of 1000 kg/m³; what is in a bin is taken to weigh as much", Origin.OwnAssumption);

    /// <summary>Null where the plan says neither a weight nor a volume.</summary>
    public static ItemWeight? Of(Station station, UnitSystem units)
    {
        var (empty, full) = (station.WeightEmpty, station.WeightFull);
        if (empty is null && full is null && station.Volume is null)
        {
            return null;
        }

        if (full is null && station.Volume is { } volume)
        {
            return new ItemWeight(
                station, AsSaid(station, "empty", empty?.Base ?? 0, units), Filled(station, empty?.Base ?? 0, volume, units));
        }

        return new ItemWeight(
            station, AsSaid(station, "empty", (empty ?? full)!.Value.Base, units),
            AsSaid(station, "full", (full ?? empty)!.Value.Base, units));
    }

    /// <summary>False for a bin or a tank of which the plan says only what it holds: its own weight counts as nothing.</summary>
    public bool EmptyIsSaid => Station.WeightEmpty is not null || Station.WeightFull is not null;

    public Figure Of(bool full) => full ? Full : Empty;

    private static Figure AsSaid(Station station, string state, double kilograms, UnitSystem units)
    {
        string text = QuantityText.Of(kilograms, Measure.Mass, units);
        bool said = station.WeightEmpty is not null || station.WeightFull is not null;
        return Make(
            station, state, kilograms, units,
            [said ? FigureInput.Said("weight", text, station.Span) : FigureInput.Taken("weight", "not said", Said)],
            "weight as said", text, Said);
    }

    private static Figure Filled(Station station, double empty, Quantity volume, UnitSystem units)
    {
        string bare = QuantityText.Of(empty, Measure.Mass, units);
        string holds = QuantityText.Of(volume.Base, Measure.Liquid, units);
        return Make(
            station, "full", empty + (volume.Base * WaterDensity), units,
            [
                station.WeightEmpty is null
                    ? FigureInput.Taken("weight empty", "not said", Water)
                    : FigureInput.Said("weight empty", bare, station.Span),
                FigureInput.Said("volume", holds, station.Span),
                FigureInput.Taken("weight of water", WorkingText.Density(WaterDensity, units), Water),
            ],
            "weight empty + volume x weight of water", $"{bare} + {holds} x {WorkingText.Density(WaterDensity, units)}", Water);
    }

    private static Figure Make(
        Station station, string state, double kilograms, UnitSystem units, IReadOnlyList<FigureInput> inputs,
        string formula, string substituted, Source source) => new()
        {
            Name = $"weight {state}",
            Of = station.Id,
            Value = kilograms,
            Kind = QuantityKind.Mass,
            Text = QuantityText.Of(kilograms, Measure.Mass, units),
            Inputs = inputs,
            Formula = formula,
            Substituted = substituted,
            Source = source,
        };
}
