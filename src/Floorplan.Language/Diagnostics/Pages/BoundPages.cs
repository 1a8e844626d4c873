using Floorplan.Language.Parsing;

namespace Floorplan.Language.Diagnostics.Pages;

/// <summary>Files that are too large, or too far from a plan, to read to their end.</summary>
internal static class BoundPages
{
    public static IReadOnlyList<DiagnosticPage> All { get; } =
    [
        new("file-too-large",
            $"A plan has at most {Bounds.MostLines} lines and {Bounds.MostCharacters / 1_000_000} million characters, far more than any "
                + "real unit. Mostly it is some other file.",
            "# … and some 200 000 lines more",
            "# A plan of some hundred lines.")
        {
            WrongInFull = () => new string('\n', Bounds.MostLines + 1),
        },
        new("too-many-mistakes",
            $"After {Bounds.MostMistakes} mistakes the rest is not read or not told. Mostly one slip near the top is behind them, or the "
                + "file is no plan.",
            "{ \"this\": \"is some other kind of file\" }\n…",
            "plan \"Unit\"")
        {
            WrongInFull = () => string.Concat(Enumerable.Repeat("{ }\n", Bounds.MostMistakes + 1)),
        },
        new("too-many-details",
            $"A statement has at most {Bounds.MostDetails} details. Mostly one line was copied again and again.",
            "plan \"Unit\"\n  note \"Check sizes\"\n…",
            "plan \"Unit\"\n  note \"Check sizes\"")
        {
            WrongInFull = () => "plan \"Unit\"\n" + string.Concat(Enumerable.Repeat("  note \"Check sizes\"\n", Bounds.MostDetails + 1)),
        },
    ];
}
