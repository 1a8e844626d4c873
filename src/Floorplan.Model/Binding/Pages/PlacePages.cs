using Floorplan.Language.Diagnostics.Pages;

namespace Floorplan.Model.Binding.Pages;

/// <summary>Sizes and places of things.</summary>
internal static class PlacePages
{
    public static IReadOnlyList<DiagnosticPage> All { get; } =
    [
        Page("full-lighter-than-empty",
            "A thing weighs more full than empty, and a shell may weigh more loaded than it does empty. One of the two figures is a slip.",
            "bin offal in wet, 500 x 500 x 700, corner south-west, weight 80 kg empty, 20 kg full",
            "bin offal in wet, 500 x 500 x 700, corner south-west, weight 20 kg empty, 80 kg full"),
        Page("size-missing",
            "A thing needs its size along and across; a height may be left out. An opening needs width and height.",
            "station table \"Table\" in wet\n  place    corner south-west",
            "station table \"Table\" in wet\n  size     1200 x 600 x 900\n  place    corner south-west"),
        Page("larger-than-shell",
            "The thing is larger than the whole inside of the shell. Almost always a unit is a slip: a bare number is millimetres, or "
                + "inches in a plan that says `units feet`.",
            "station table \"Table\" in wet\n  size     1200 cm x 60 cm x 90 cm\n  place    corner south-west",
            "station table \"Table\" in wet\n  size     120 cm x 60 cm x 90 cm\n  place    corner south-west"),
        Page("place-missing",
            "A place fixes a thing once from west to east and once from south to north. The message says which of the two is still free.",
            Setting.Thing("against south wall"),
            Setting.Thing("against south wall, 300 from west")),
        Page("place-fixed-twice",
            "The place fixes one way twice. Even if both figures agree today, they will not when something moves.",
            Setting.Thing("against south wall, 300 from west, 4500 from east"),
            Setting.Thing("against south wall, 300 from west")),
        Page("place-circle",
            "Things are placed by one another in a circle, so that none of them has a place. One of them is to be placed by a wall.",
            Setting.Thing("against south wall, east of rack gap 100")
                + "\nstore rack \"Rack\" in wet, 900 x 500 x 1800, against south wall, east of table gap 100",
            Setting.Thing("against south wall, 300 from west")
                + "\nstore rack \"Rack\" in wet, 900 x 500 x 1800, against south wall, east of table gap 100"),
        Page("thing-in-other-room",
            "Nothing stands beside a thing in another room, because a wall is between them. It may be lined up with it.",
            "station table \"Table\" in dry, 1200 x 600 x 900, against north wall, east of bench gap 100",
            "station table \"Table\" in dry, 1200 x 600 x 900, 300 from west, in line with bench"),
        Page("turned-askew",
            "Things stand square to the walls: turned by 90, 180 or 270 degrees.",
            Setting.Thing("corner south-west") + "\n  turned   30",
            Setting.Thing("corner south-west") + "\n  turned   90"),
        Page("hole-incomplete",
            "A hole for a pipe, a cable or a fan says what it goes through (a wall, `floor` or `roof`), its size, and in a wall how high "
                + "its middle is.",
            "hole h1 in wet, south wall, 2000 from west, 50",
            "hole h1 in wet, south wall, 2000 from west, height 300, 50"),
        Page("rail-too-short",
            "A rail runs between two points at least.",
            "rail r1 \"Rail\" in wet\n  path     300 600\n  height   2200",
            "rail r1 \"Rail\" in wet\n  path     300 600, 3200 600\n  height   2200"),
    ];

    private static DiagnosticPage Page(string code, string means, string wrong, string right)
        => new(code, means, wrong, right) { Around = Setting.Bench };
}
