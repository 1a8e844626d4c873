using Floorplan.Language.Words.Terms;

namespace Floorplan.Model.Services;

/// <summary>An electric outlet.</summary>
public sealed record Outlet : CircuitPoint
{
    /// <summary>Null when not said.</summary>
    public Phases? Phases { get; init; }

    /// <summary>What cuts it off when current leaks to earth; null when not said.</summary>
    public FaultGuard? Guard { get; init; }

    /// <summary>Closed against jets of water.</summary>
    public bool Sealed { get; init; }

    public override string Kind => "outlet";

    public override IEnumerable<string> Terms =>
    [
        .. Phases is { } phases ? [TermWord.Of(phases)] : Array.Empty<string>(),
        .. Guard is { } guard ? [TermWord.Of(guard)] : Array.Empty<string>(),
        .. Sealed ? ["sealed"] : Array.Empty<string>(),
    ];
}
