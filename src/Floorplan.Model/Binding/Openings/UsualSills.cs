using Floorplan.Language.Quantities;
using Floorplan.Model.Openings;

namespace Floorplan.Model.Binding.Openings;

/// <summary>Sill heights taken where the plan says none. All own assumptions: bench height, eye height, above heads.</summary>
internal static class UsualSills
{
    private static readonly Length Hatch = Length.FromMillimetres(900);
    private static readonly Length Window = Length.FromMillimetres(1100);
    private static readonly Length Chute = Length.FromMillimetres(400);
    private static readonly Length Vent = Length.FromMillimetres(2000);

    public static Length Of(OpeningKind kind) => kind switch
    {
        OpeningKind.Hatch => Hatch,
        OpeningKind.Window => Window,
        OpeningKind.Chute => Chute,
        OpeningKind.Vent => Vent,
        _ => Length.Zero,
    };
}
