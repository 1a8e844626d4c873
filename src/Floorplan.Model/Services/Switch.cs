using Floorplan.Language.Words.Terms;

namespace Floorplan.Model.Services;

/// <summary>A switch on a wall.</summary>
public sealed record Switch : CircuitPoint
{
    /// <summary>Null when not said.</summary>
    public Switching? Switching { get; init; }

    /// <summary>Closed against jets of water.</summary>
    public bool Sealed { get; init; }

    public override string Kind => "switch";

    public override IEnumerable<string> Terms =>
    [
        .. Switching is { } switching ? [TermWord.Of(switching)] : Array.Empty<string>(),
        .. Sealed ? ["sealed"] : Array.Empty<string>(),
    ];
}
