using Floorplan.Language.Diagnostics.Pages;

namespace Floorplan.Model.Binding.Pages;

/// <summary>Doors, hatches, windows, openings, chutes and vents that fit no wall.</summary>
internal static class OpeningPages
{
    public static IReadOnlyList<DiagnosticPage> All { get; } =
    [
        Page("wall-not-shared",
            "The two sides have no wall in common there. The message says on which sides they do.",
            "door d1 wet to dry, north wall, centred, 900 x 2000",
            "door d1 wet to dry, east wall, centred, 900 x 2000"),
        Page("which-wall",
            "The two sides have several walls in common, and the line does not say which one is meant.",
            "door d1 wet to outside, 500 from west, 900 x 2000",
            "door d1 wet to outside, south wall, 500 from west, 900 x 2000"),
        Page("opening-without-room",
            "An opening leads from a room to another one, or to `outside`.",
            "door d1 wet to wet, centred, 900 x 2000",
            "door d1 wet to dry, centred, 900 x 2000"),
        Page("opening-beyond-wall",
            "The opening reaches beyond the end of its wall where it is placed.",
            "door d1 wet to dry, 3500 from south, 900 x 2000",
            "door d1 wet to dry, 3000 from south, 900 x 2000"),
        Page("opening-above-ceiling",
            "Sill and height together are more than the height of the finished ceiling.",
            "window n1 wet to outside, south wall, centred, 1200 x 1600, sill 1100",
            "window n1 wet to outside, south wall, centred, 1200 x 800, sill 1100"),
        Page("place-across-wall",
            "An opening is placed along its wall. In a wall that runs from south to north a distance from the west end says nothing.",
            "door d1 wet to dry, 500 from west, 900 x 2000",
            "door d1 wet to dry, 500 from south, 900 x 2000"),
        Page("swings-elsewhere",
            "A leaf swings into one of the two sides that its door joins.",
            "door d1 wet to dry, centred, 900 x 2000, swings out",
            "door d1 wet to dry, centred, 900 x 2000, swings dry"),
        Page("hinge-not-on-wall",
            "The hinge is at one end of the opening, so that it is named by an end of its wall.",
            "door d1 wet to dry, centred, 900 x 2000, swings dry, hinge west",
            "door d1 wet to dry, centred, 900 x 2000, swings dry, hinge north"),
        Page("step-count",
            "A door has 1 to 40 steps: how many rises lead from the ground to the floor.",
            "door d1 wet to outside, south wall, centred, 900 x 2000, steps 400",
            "door d1 wet to outside, south wall, centred, 900 x 2000, steps 4"),
        Page("frame-section",
            "A frame is of tube or angle: two sides of the section, then the thickness of its steel.",
            "door d1 wet to outside, south wall, centred, 900 x 2000, frame tube 50 x 50 x 30",
            "door d1 wet to outside, south wall, centred, 900 x 2000, frame tube 50 x 50 x 3"),
        Page("radius-too-large",
            "The corners of a hole are rounded by half of its smaller side at most, which makes its ends half circles.",
            "vent v1 wet to outside, south wall, centred, 300 x 200, sill 1800, radius 150",
            "vent v1 wet to outside, south wall, centred, 300 x 200, sill 1800, radius 100"),
    ];

    private static DiagnosticPage Page(string code, string means, string wrong, string right)
        => new(code, means, wrong, right) { Around = Setting.Rooms };
}
