using Floorplan.Language.Diagnostics.Pages;

namespace Floorplan.Model.Binding.Pages;

/// <summary>Names that nothing has, or that two things have.</summary>
internal static class NamePages
{
    public static IReadOnlyList<DiagnosticPage> All { get; } =
    [
        new("unknown-name",
            "A line uses a name that nothing in the plan has. Mostly one of the two is a slip, or the thing got another name since. "
                + "Capital letters count in names.",
            Setting.Thing("against north wall, east of bensh gap 100"),
            Setting.Thing("against north wall, east of bench gap 100"))
        { Around = Setting.Bench },
        new("unknown-stop",
            "A flow goes by something that is not in the plan. Stops are stations, openings, water points, rooms and `outside`.",
            "flow product\n  bensh -> outside   by hand",
            "flow product\n  bench -> outside   by hand")
        { Around = Setting.Bench },
        new("wrong-kind-of-name",
            "The name is given, but to a thing of another kind than the one that is asked for here.",
            "store rack \"Rack\" in bench, 900 x 500 x 1800, corner south-west",
            "store rack \"Rack\" in wet, 900 x 500 x 1800, corner south-west")
        { Around = Setting.Bench },
        new("name-taken",
            "Two things have one name, so that a line that uses it could mean either.",
            "sink bench hand in dry, 400 x 350, corner south-west",
            "sink s1 hand in dry, 400 x 350, corner south-west")
        { Around = Setting.Bench },
        new("name-reserved",
            "`outside` is everything beyond the shell. Nothing else can be called that.",
            "sink outside wash in dry, 400 x 350, corner south-west",
            "sink s1 wash in dry, 400 x 350, corner south-west")
        { Around = Setting.Rooms },
        new("in-no-room",
            "Everything stands in a room, because its place is told from the room's walls.",
            "station table \"Table\"\n  size     1200 x 600 x 900\n  place    corner north-west",
            "station table \"Table\" in wet\n  size     1200 x 600 x 900\n  place    corner north-west")
        { Around = Setting.Rooms },
        new("given-twice",
            "A plan has this statement once. Put all of its details below the first one.",
            "plan \"Unit\"\nshell shed 8000 x 4000 x 2600\nplan \"Unit\"\n  code us\nroom all dry from west to east",
            "plan \"Unit\"\n  code us\nshell shed 8000 x 4000 x 2600\nroom all dry from west to east"),
        new("falls-twice",
            "A room's floor falls one way. Two `falls` lines for one room cannot both hold.",
            "falls wet 2 % to fd1\nfalls wet 1 % to fd1",
            "falls wet 2 % to fd1")
        { Around = Setting.Rooms + "drain fd1 floor in wet, centred, 2000 from west, 100\n" },
    ];
}
