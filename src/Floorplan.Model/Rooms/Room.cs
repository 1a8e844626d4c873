using Floorplan.Language.Quantities;
using Floorplan.Language.Text;
using Floorplan.Model.Shapes;
using NetTopologySuite.Geometries;

namespace Floorplan.Model.Rooms;

/// <summary>One room between its finished faces.</summary>
public sealed record Room
{
    public required string Id { get; init; }

    public required string Label { get; init; }

    public required HygieneClass Class { get; init; }

    /// <summary>Finished floor outline in millimetres; carved rooms are already taken out.</summary>
    public required Polygon Floor { get; init; }

    /// <summary>Bounding box of the floor, exact.</summary>
    public required Box Bounds { get; init; }

    public required Length CeilingHeight { get; init; }

    /// <summary>The id of the room that this one is carved from, or null.</summary>
    public string? CarvedFrom { get; init; }

    /// <summary>The temperature that the room keeps, in C; null when not said.</summary>
    public double? KeepCelsius { get; init; }

    /// <summary>Heat that its cooling unit carries away, in W; null when not said.</summary>
    public double? CoolingWatts { get; init; }

    /// <summary>Light in lux; null when not said.</summary>
    public double? Lux { get; init; }

    /// <summary>Null when not said.</summary>
    public SaidLamps? Lamps { get; init; }

    /// <summary>
    /// Washed down with a hose: true unless the plan says otherwise for dirty and clean rooms, false for the others. It says nothing of
    /// drains.
    /// </summary>
    public required bool WashedDown { get; init; }

    public Falls? Falls { get; init; }

    /// <summary>Finishes by surface (<c>floor</c>, <c>walls</c>, <c>ceiling</c>, <c>base</c>), as written.</summary>
    public IReadOnlyDictionary<string, string> Finishes { get; init; } = new Dictionary<string, string>();

    public SourceSpan Span { get; init; }

    public double AreaSquareMetres => Floor.Area / 1e6;
}

public enum HygieneClass
{
    Dirty,
    Clean,
    Cold,
    Dry,
    Staff,
    Plant,
    Toilet,
}

/// <summary>The floor slope of a room and the drain it runs to (null: named drain not found).</summary>
/// <param name="Slope">Rise over run: 2 % is 0.02.</param>
public sealed record Falls(double Slope, string? DrainId, SourceSpan Span);

/// <summary>A wall between two rooms (ids), whole, before openings are cut.</summary>
public sealed record Partition(string RoomA, string RoomB, Polygon Outline, Length Thickness, Length Height)
{
    /// <summary>What it is built of, as written; empty when not said.</summary>
    public string BuiltOf { get; init; } = "";
}
