using Floorplan.Language.Words.Terms;

namespace Floorplan.Model.Services;

/// <summary>An electric panel.</summary>
public sealed record Panel : RatedPoint
{
    /// <summary>Null when not said.</summary>
    public Phases? Phases { get; init; }

    public override string Kind => "panel";

    public override IEnumerable<string> Terms => Phases is { } phases ? [TermWord.Of(phases)] : [];
}
