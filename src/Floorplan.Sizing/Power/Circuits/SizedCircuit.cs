using Floorplan.Language.Text;
using Floorplan.Model.Services;
using Floorplan.Sizing.Power.Loads;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Power.Circuits;

/// <summary>One circuit with what guards it and what it is wired with.</summary>
/// <param name="Name">As written, or the next free number.</param>
/// <param name="IsProposed">The plan names no circuit for its loads.</param>
/// <param name="Panel">The nearest that gives its voltage; null where the plan has no panel.</param>
/// <param name="Volts">Of its largest load; above 0.</param>
/// <param name="Current">What its loads draw together in each line, in A.</param>
/// <param name="Draws">VA of all its loads.</param>
public sealed record SizedCircuit(
    string Name, bool IsProposed, Panel? Panel, IReadOnlyList<PowerLoad> Loads, double Volts, int Phases, Figure Current, Figure Draws)
{
    /// <summary>For sentences: <c>circuit 3</c>.</summary>
    public string Of => "circuit " + Name;

    /// <summary>For tables: <c>4 (proposed)</c>.</summary>
    public string Mark => IsProposed ? Name + " (proposed)" : Name;

    /// <summary>For tables: <c>Drum plucker, lamps of Holding and Packing</c>.</summary>
    public string Serves => string.Join(", ", Loads.Where(l => l.Kind != PowerLoadKind.Light).Select(l => l.Name)
        .Concat(Lamps is { Count: > 0 } lamps ? ["lamps of " + string.Join(", ", lamps)] : Array.Empty<string>()));

    private List<string> Lamps => [.. Loads.Where(l => l.Kind == PowerLoadKind.Light).Select(l => l.Room?.Label ?? l.Id)];

    /// <summary>The rating that the plan says for its outlets, in A; null when not said.</summary>
    public Figure? SaidBreaker { get; init; }

    /// <summary>What guards it, in A: the one said where that is enough, else the one that it needs. Null above the largest.</summary>
    public Figure? Breaker { get; init; }

    /// <summary>Null where no conductor of the table carries it.</summary>
    public Figure? Conductor { get; init; }

    /// <summary>Along the cable, in mm; null where the plan has no panel.</summary>
    public Figure? Length { get; init; }

    /// <summary>What of the voltage is lost, 1 is all; null where there is no cable or no length.</summary>
    public Figure? Drop { get; init; }

    /// <summary>The larger conductors of the table, and what share of the voltage each would lose.</summary>
    public IReadOnlyList<(string Name, double Drop)> Larger { get; init; } = [];

    /// <summary>What switches off when current leaks: <c>30 mA</c>, <c>GFCI</c>; empty where none is asked for.</summary>
    public string Guard { get; init; } = "";

    /// <summary>Only lamps hang on it.</summary>
    public bool IsLight => Loads.All(l => l.Kind == PowerLoadKind.Light);

    public SourceSpan Span => Loads[0].Span;
}
