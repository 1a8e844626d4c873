namespace Floorplan.Language.Diagnostics.Pages;

/// <summary>Slips in words, lines and quotes.</summary>
internal static class WordPages
{
    public static IReadOnlyList<DiagnosticPage> All { get; } =
    [
        new("unknown-statement",
            "A line starts with a word that starts no statement: a slip, or a detail that stands at the margin. Details stand below "
                + "their statement, a little to the right.",
            "statoin bench \"Bench\" in prep\n  size 1200 x 600 x 900",
            "station bench \"Bench\" in prep\n  size 1200 x 600 x 900"),
        new("unknown-detail",
            "The statement has no such detail. The word is a slip, or it belongs to another statement.",
            "station bench \"Bench\" in prep\n  plase against north wall, 300 from west",
            "station bench \"Bench\" in prep\n  place against north wall, 300 from west"),
        new("unknown-word",
            "In this place only a few words fit, and this is none of them.",
            "room prep \"Preparation\" dity from west to 3600",
            "room prep \"Preparation\" dirty from west to 3600"),
        new("not-expected",
            "Something else belongs in this place: a word was left out, or two were swapped. The message says what was expected and what "
                + "stands there.",
            "door d1 prep outside, south wall, 500 from west, 900 x 2050",
            "door d1 prep to outside, south wall, 500 from west, 900 x 2050"),
        new("left-over",
            "Words are left over after a detail that is complete. Mostly a comma is missing.",
            "station bench \"Bench\" in prep, 1200 x 600 x 900 against north wall, 300 from west",
            "station bench \"Bench\" in prep, 1200 x 600 x 900, against north wall, 300 from west"),
        new("said-twice",
            "A detail that counts once is said twice in one statement, so that one of the two would be lost.",
            "station bench \"Bench\" in prep\n  size 1200 x 600\n  size 1400 x 600",
            "station bench \"Bench\" in prep\n  size 1400 x 600"),
        new("detail-missing",
            "The statement cannot do without this detail. Without its height, for example, a rail could be neither drawn nor checked.",
            "rail r1 in prep\n  path 300 600, 3200 600",
            "rail r1 in prep\n  path 300 600, 3200 600\n  height 2200"),
        new("bad-name",
            "A name starts with a letter, so that it cannot be taken for a number.",
            "station 2nd-bench \"Second bench\" in prep",
            "station bench2 \"Second bench\" in prep"),
        new("name-too-long",
            "A name has at most 60 letters. What the drawing shows is the label in quotes, and that may be longer.",
            "station the-long-stainless-bench-under-the-window-where-the-fish-is-filleted in prep",
            "station bench \"The long stainless bench under the window where the fish is filleted\" in prep"),
        new("text-not-closed",
            "A text in quotes has no closing quote on its line, so that the rest of the line was taken for text.",
            "station bench \"Bench in prep",
            "station bench \"Bench\" in prep"),
        new("text-too-long",
            "A text has at most 200 characters; a longer one would not fit a sheet.",
            "plan \"Unit\"\n  note \"Wash down after work, first the walls, then the benches, …\"",
            "plan \"Unit\"\n  note \"Wash down after work\"\n  note \"First the walls, then the benches\"")
        {
            WrongInFull = () => $"plan \"Unit\"\n  note \"{string.Concat(Enumerable.Repeat("Wash down. ", 20))}\"",
        },
        new("hidden-character",
            "A text or comment holds a character that does not show on a screen, mostly pasted in from a web page. Such characters can "
                + "make a name read other than it is.",
            "plan \"Tarn\u200BFoot\"",
            "plan \"Tarn Foot\""),
        new("kind-in-room",
            "A kind describes things that may stand anywhere. The stations that take it say their room.",
            "kind bench \"Bench\" in prep\n  size 1200 x 600 x 900",
            "kind bench \"Bench\"\n  size 1200 x 600 x 900\nstation b1 like bench in prep"),
    ];
}
