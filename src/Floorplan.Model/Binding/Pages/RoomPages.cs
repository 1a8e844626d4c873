using Floorplan.Language.Diagnostics.Pages;

namespace Floorplan.Model.Binding.Pages;

/// <summary>Rooms that do not fit together or into the shell.</summary>
internal static class RoomPages
{
    public static IReadOnlyList<DiagnosticPage> All { get; } =
    [
        new("room-without-shape",
            "A room is a slice of the shell, told by where it begins and ends, or a rectangle in another room.",
            "room all \"Workroom\" clean",
            "room all \"Workroom\" clean from west to east")
        { Around = Setting.Shell },
        new("room-back-to-front",
            "The room ends where it starts or before.",
            "room all \"Workroom\" clean from 6000 to 2000",
            "room rest \"Store\" dry from west to 2000\nroom all \"Workroom\" clean from 2000 to east")
        { Around = Setting.Shell },
        new("room-outside-shell",
            "The room reaches beyond the finished inside of the shell, which is smaller than its steel by the walls and linings. Mostly "
                + "a unit is a slip.",
            "room all \"Workroom\" clean from west to 12000",
            "room all \"Workroom\" clean from west to east")
        { Around = Setting.Shell },
        new("room-too-thin",
            "Between its partitions no floor is left: a slice runs from the middle of one partition to the middle of the next.",
            "room a \"A\" dry from west to 3000\nroom b \"B\" dry from 3000 to 3060\nroom c \"C\" dry from 3060 to east",
            "room a \"A\" dry from west to 3000\nroom b \"B\" dry from 3000 to 4200\nroom c \"C\" dry from 4200 to east")
        { Around = Setting.Shell },
        new("rooms-overlap",
            "Two rooms take the same floor. A slice begins where the one before it ends; a rectangle says with `in` what room it is cut "
                + "out of.",
            "room a \"A\" dry from west to 3000\nroom b \"B\" dry from 2000 to east",
            "room a \"A\" dry from west to 3000\nroom b \"B\" dry from 3000 to east")
        { Around = Setting.Shell },
        new("floor-without-room",
            "Floor between rooms belongs to none. It is a warning, unless an opening is to lead over it, because then there is no wall "
                + "to put the opening in.",
            "room a \"A\" dry from west to 3000\nroom b \"B\" dry from 4000 to east",
            "room a \"A\" dry from west to 4000\nroom b \"B\" dry from 4000 to east")
        { Around = Setting.Shell },
        new("room-does-not-fit",
            "The rectangle is larger than what it is cut out of, or reaches out of it where it is placed.",
            "room lobby \"Lobby\" staff area 1300 x 5000, in wet, corner north-west",
            "room lobby \"Lobby\" staff area 1300 x 1500, in wet, corner north-west")
        { Around = Setting.Rooms },
        new("room-swallowed",
            "The rectangle with its partitions takes all floor of the room that it is cut out of.",
            "room lobby \"Lobby\" staff area 5960 x 4000, in wet, corner north-west",
            "room lobby \"Lobby\" staff area 1300 x 1500, in wet, corner north-west")
        { Around = Setting.Rooms },
        new("room-in-pieces",
            "A room cut out of this one leaves it in pieces that do not touch. Each piece is a room of its own.",
            "room hall \"Hall\" staff area 900 x 4000, in wet, 2000 from west, against north wall",
            "room hall \"Hall\" staff area 900 x 2500, in wet, 2000 from west, against north wall")
        { Around = Setting.Rooms },
        new("room-in-no-room",
            "Two rectangles are each in the other, so that neither has a place.",
            "room a \"A\" dry area 1300 x 1100, in b, corner north-west\nroom b \"B\" dry area 2000 x 2000, in a, corner north-west",
            "room a \"A\" dry area 1300 x 1100, in b, corner north-west\nroom b \"B\" dry area 2000 x 2000, in wet, corner north-west")
        { Around = Setting.Rooms },
        new("room-placed-by-thing",
            "Rooms come before the things in them, so that a room is placed by walls or by rooms only.",
            "room lobby \"Lobby\" staff area 1300 x 1100, in wet, against south wall, in line with bench",
            "room lobby \"Lobby\" staff area 1300 x 1100, in wet, against south wall, 300 from west")
        { Around = Setting.Bench },
        new("partition-thickness",
            "A partition is between 1 mm and 1 m thick. Mostly the unit is a slip.",
            "partitions thickness 80 in",
            "partitions thickness 80 mm")
        { Around = Setting.Rooms },
        new("too-many-rooms",
            "A plan has at most 400 rooms, far more than any small unit.",
            "room r1 dry area 10 x 10, at 0, 0\n…",
            "room r1 dry from west to east")
        {
            Around = Setting.Shell,
            WrongInFull = ()
                => "room r dry from west to east\n"
                    + string.Concat(Enumerable.Range(0, 400)
                        .Select(i => $"room r{i} dry area 100 x 50, in r, at {i % 40 * 200}, {i / 40 * 200}\n")),
        },
        new("rooms-too-deep",
            $"More than {PlanBounds.DeepestRooms} rooms are each in the one before. Mostly a line was copied again and again.",
            "room r1 dry area 9000 x 3000, in r, at 3, 3\nroom r2 dry area 8994 x 2994, in r1, at 3, 3\n…",
            "room r dry from west to east\nroom r1 dry area 3000 x 3000, in r, at 100, 100")
        {
            Around = Setting.Shell,
            WrongInFull = ()
                => "partitions thickness 1 mm\nroom r0 dry from west to east\n"
                    + string.Concat(Enumerable.Range(1, PlanBounds.DeepestRooms + 5)
                        .Select(i => $"room r{i} dry area {9000 - (6 * i)} x {3000 - (6 * i)}, in r{i - 1}, at 3, 3\n")),
        },
        new("too-many-things",
            "A plan has at most 20 000 statements, far more than any small unit.",
            "light dry 220 lux\n…",
            "light dry 220 lux")
        {
            Around = Setting.Rooms,
            WrongInFull = () => string.Concat(Enumerable.Range(0, 20_000).Select(i => $"limit limit-{i} 4 m \"many\"\n")),
        },
        new("too-many-legs",
            "The flows of a plan have at most 20 000 legs together, far more than any small unit.",
            "door d1 dry to outside, south wall, 300 from west, 900 x 2000, swings out\nflow product\n  outside -> d1 -> outside -> d1 …",
            "door d1 dry to outside, south wall, 300 from west, 900 x 2000, swings out\nflow product\n  outside -> d1")
        {
            Around = Setting.Rooms,
            WrongInFull = ()
                => "door d1 dry to outside, south wall, 300 from west, 900 x 2000, swings out\nflow product\n  outside"
                    + string.Concat(Enumerable.Repeat(" -> d1 -> outside", 10_001)),
        },
        new("too-many-in-one-place",
            "Very many things stand in one place, each in all others. Mostly one was copied again and again, or the place of all is the "
                + "same.",
            "station b1 \"Bench\" in dry, 900 x 600 x 900, corner south-west\n…",
            "station b1 \"Bench\" in dry, 900 x 600 x 900, corner south-west")
        {
            Around = Setting.Rooms,
            WrongInFull = () => string.Concat(Enumerable.Range(0, 130)
                .Select(i => $"station b{i} \"Bench\" in dry, 900 x 600 x 900, corner south-west\n")),
        },
    ];
}
