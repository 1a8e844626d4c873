using Floorplan.Language.Quantities;
using Floorplan.Language.Text;
using Floorplan.Model.Openings;
using Floorplan.Model.Rooms;
using Floorplan.Model.Services;
using Floorplan.Model.Stations;

namespace Floorplan.Model.Flows;

/// <summary>One stream of the day: its chains of stops, leg by leg, in the order written.</summary>
public sealed record Flow(Stream Stream, string Label, IReadOnlyList<Leg> Legs, SourceSpan Span)
{
    /// <summary>The one product of the plan that goes this way; null for all that have no flow of their own.</summary>
    public string? Product { get; init; }
}

public enum Stream
{
    Product,
    Waste,
    People,
    Supplies,
    Returns,
}

/// <summary>From one stop to the next.</summary>
/// <param name="Chain">Number of the written line within the flow, from 0; legs of one chain follow each other.</param>
public sealed record Leg(Stop From, Stop To, Carriage Carriage, Period Period, int Chain, SourceSpan Span);

/// <param name="Width">Width of a trolley or belt; null when not said.</param>
public sealed record Carriage(CarriageKind Kind, Length? Width)
{
    /// <summary>Of a trolley, the way it is pushed; null when not said.</summary>
    public Length? Length { get; init; }

    /// <summary>What one load carried by hand weighs, kg; null when not said.</summary>
    public double? LoadKilograms { get; init; }

    public LoadKind LoadKind { get; init; }

    /// <summary>How much goes at a time, in items or by weight; null when not said.</summary>
    public Quantity? Takes { get; init; }

    /// <summary>How many trolleys go this way; null when not said.</summary>
    public int? Trolleys { get; init; }
}

/// <summary>Whether a load keeps still in the hands.</summary>
public enum LoadKind
{
    Still,
    Live,
    Liquid,
}

public enum CarriageKind
{
    Hand,
    Trolley,
    Rail,
    Conveyor,
    Chute,
    Pump,

    /// <summary>People on their own feet.</summary>
    Walk,
}

public enum Period
{
    During,
    Before,
    After,
}

/// <summary>A place that a leg starts or ends at.</summary>
public abstract record Stop(SourceSpan Span)
{
    /// <summary>The id as written, or <c>outside</c>.</summary>
    public abstract string Name { get; }
}

public sealed record OutsideStop(SourceSpan Span) : Stop(Span)
{
    public override string Name => "outside";
}

public sealed record StationStop(Station Station, SourceSpan Span) : Stop(Span)
{
    public override string Name => Station.Id;
}

public sealed record OpeningStop(Opening Opening, SourceSpan Span) : Stop(Span)
{
    public override string Name => Opening.Id;
}

public sealed record ServiceStop(ServicePoint Service, SourceSpan Span) : Stop(Span)
{
    public override string Name => Service.Id;
}

public sealed record RoomStop(Room Room, SourceSpan Span) : Stop(Span)
{
    public override string Name => Room.Id;
}
