using Floorplan.Language.Words.Terms;

namespace Floorplan.Model.Services;

/// <summary>A water or room heater.</summary>
public sealed record Heater : CircuitPoint
{
    /// <summary>Null when not said.</summary>
    public Phases? Phases { get; init; }

    /// <summary>Null when not said.</summary>
    public HeaterForm? Form { get; init; }

    public override string Kind => "heater";

    public override IEnumerable<string> Terms =>
    [
        .. Phases is { } phases ? [TermWord.Of(phases)] : Array.Empty<string>(),
        .. Form is { } form ? [TermWord.Of(form)] : Array.Empty<string>(),
    ];
}
