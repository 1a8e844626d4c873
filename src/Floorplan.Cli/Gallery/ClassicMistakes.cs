namespace Floorplan.Cli.Gallery;

/// <summary>The mistakes that the gallery shows, each a small change to a template.</summary>
internal static class ClassicMistakes
{
    public static IReadOnlyList<Mistake> All { get; } =
    [
        new("back-through-dirty",
            "Product led back through the dirty room",
            "poultry-40ft",
            "product-goes-back",
            2,
            "The packed birds leave by the big door at the dirty end, because the van stops there.",
            [(
                "pack -> d4 -> rack -> d5 -> outside                    by trolley 22 in wide",
                "pack -> h1 -> crates -> d1 -> outside                   by hand")]),
        new("offal-crosses-product",
            "Offal crosses the product",
            "vegetable-l-shed",
            "waste-meets-product",
            2,
            "Trimmings are wheeled out in the middle of the day, over the floor that the crates come in on.",
            [(
                "trim-bin -> d1 -> outside                    by trolley 700 wide, after work",
                "trim-bin -> d1 -> outside                    by trolley 700 wide")]),
        new("bench-beyond-reach",
            "A bench beyond reach",
            "fish-20ft",
            "out-of-reach",
            1,
            "The fillet bench was made half as deep again to have room for a second crate.",
            [(
                "  size     1300 x 600 x 900\n  place    against south wall, 1250 from west",
                "  size     1300 x 1000 x 900\n  place    against south wall, 1250 from west")]),
        new("sink-behind-tank",
            "A hand sink behind a tank",
            "goat-dairy-shed",
            "sink-blocked",
            4,
            "There was just room for the sink in the corner, until the vat came.",
            [
                (
                    "sink  s3 hand in making, 450 x 350, against north wall, 400 from east",
                    "sink  s3 hand in making, 450 x 350, corner north-east"),
                (
                    "  round    1000 x 950\n  place    against south wall, 900 from west",
                    "  round    1000 x 950\n  place    3050 from west, 400 from north"),
                ("  place    against south wall, east of vat gap 250", "  place    against south wall, 2150 from west"),
            ]),
        new("exit-through-cold-store",
            "An exit through a cold store that locks in",
            "goat-dairy-shed",
            "exit-locks-in",
            1,
            "The ripening room's outer door was bought with a plain padlock and no handle inside.",
            [(
                "door  d5 ripening to outside,  south wall, 300 from east, 1050 x 2050, swings out, closes itself, opens from inside",
                "door  d5 ripening to outside,  south wall, 300 from east, 1050 x 2050, swings out, closes itself")]),
        new("opening-in-a-post",
            "An opening cut into a corner post",
            "empty-start",
            "cuts-frame",
            1,
            "The door was pushed into the corner to win bench length along the wall.",
            [("south wall, 500 from east", "south wall, 0 from east")]),
        new("hands-short",
            "Too few hands for the day",
            "poultry-40ft",
            "falls-behind",
            10,
            "Two of the three at the clean end were taken off the list, because the plucker looked like the slow part.",
            [("crew       kill 2, evis 3", "crew       kill 2, evis 1")]),
    ];
}
