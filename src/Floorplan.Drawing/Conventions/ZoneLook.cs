using Floorplan.Model.Rooms;

namespace Floorplan.Drawing.Conventions;

/// <summary>How the floor of a hygiene class looks: tint, hatch and letter together.</summary>
/// <param name="Tint">Fill, or null for white paper.</param>
public sealed record ZoneLook(string Letter, string Name, string? Tint, HatchStyle Hatch)
{
    // Tints and hatches: the project's own choice; each pair of neighbouring zones differs in both direction and pitch or form.
    private static readonly ZoneLook Dirty = new("D", "dirty: receiving, kill, scald, gut", Palette.Tint(Palette.Orange, 0.2), new(45, 4));
    private static readonly ZoneLook Clean = new("C", "clean: cut, wash, pack", null, new(0, 3, HatchForm.Dots));
    private static readonly ZoneLook Cold = new("K", "cold: chill, freeze, store", Palette.Tint(Palette.Blue, 0.12), new(0, 3));
    private static readonly ZoneLook Dry = new("Y", "dry: packaging and supplies", Palette.Tint(Palette.Yellow, 0.25), new(135, 5));
    private static readonly ZoneLook Staff = new("P", "people: change, wash, break", Palette.Tint(Palette.Green, 0.15), new(90, 4));
    private static readonly ZoneLook Plant =
        new("U", "plant: machines and services", Palette.Tint(Palette.Grey, 0.15), new(45, 5, HatchForm.Crossed));
    private static readonly ZoneLook Toilet = new("T", "toilet", Palette.Tint(Palette.Purple, 0.2), new(135, 3));

    public static ZoneLook Of(HygieneClass hygieneClass) => hygieneClass switch
    {
        HygieneClass.Dirty => Dirty,
        HygieneClass.Clean => Clean,
        HygieneClass.Cold => Cold,
        HygieneClass.Dry => Dry,
        HygieneClass.Staff => Staff,
        HygieneClass.Plant => Plant,
        HygieneClass.Toilet => Toilet,
        _ => throw new ArgumentOutOfRangeException(nameof(hygieneClass), hygieneClass, "no look for this class"),
    };
}
