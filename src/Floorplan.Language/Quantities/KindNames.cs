namespace Floorplan.Language.Quantities;

/// <summary>How a sentence calls a kind of quantity.</summary>
public static class KindNames
{
    public static string Of(QuantityKind kind) => kind switch
    {
        QuantityKind.Length => "a length",
        QuantityKind.Area => "an area",
        QuantityKind.Volume => "a volume",
        QuantityKind.Flow => "a flow of water",
        QuantityKind.AirFlow => "a flow of air",
        QuantityKind.Time => "a time",
        QuantityKind.Mass => "a weight",
        QuantityKind.Temperature => "a temperature",
        QuantityKind.Power => "a power",
        QuantityKind.Energy => "an energy",
        QuantityKind.Voltage => "a voltage",
        QuantityKind.Current => "a current",
        QuantityKind.Illuminance => "a light level",
        QuantityKind.Ratio => "a percentage",
        QuantityKind.Rate => "a rate",
        QuantityKind.Count => "a count",
        QuantityKind.Pressure => "a pressure",
        QuantityKind.Money => "a price",
        QuantityKind.Force => "a force",
        QuantityKind.LuminousFlux => "the light of a lamp",
        _ => "a speed",
    };
}
