using CsCheck;

namespace Floorplan.Tests.Language.Samples;

/// <summary>Texts to throw at the parser: soups of the language's own pieces, any characters, and spoilt plans.</summary>
internal static class PlanText
{
    private static readonly string[] Pieces =
    [
        "\n", "\n  ", "\r\n", "\t", " ", " ", ", ", "\"", "'", "\u2033", "\u201C", "½", "8'-6 1/2\"", "1/0", "999999999999999",
        "0.0000000000001", "-", "->", "→", ":", "%", "#",
        "plan ", "shell container 40 ft", "room r ", "station s ", "in ", "size ", "place ", "against north wall", "from west",
        "1200 x 600", "x", "flow product\n  ",
        "a -> b", " by hand", "door d a to b", "needs ", "cold 12 L/min", "limit ", "4 m", "holds ", "5 shelves x 120 fish", "units feet",
        "\u202E", "\0", "\uD800", "😀", "}",
    ];

    public static Gen<string> Soup { get; } = Gen.Int[0, Pieces.Length - 1].Select(i => Pieces[i]).Array[0, 60].Select(string.Concat);

    public static Gen<string> Any { get; } = Gen.String[0, 300];

    /// <summary>A good plan with a stretch cut out, doubled, or replaced.</summary>
    public static Gen<string> Spoilt { get; } =
        from plan in Gen.Bool.Select(b => b ? Sample.TarnFoot : Sample.EveryDetail)
        from start in Gen.Int[0, plan.Length - 1]
        from length in Gen.Int[0, Math.Min(80, plan.Length - start)]
        from instead in Gen.OneOf(Soup, Gen.Const(""), Gen.Const(plan.Substring(start, length) + plan.Substring(start, length)))
        select plan[..start] + instead + plan[(start + length)..];

    public static Gen<string> All { get; } = Gen.OneOf(Soup, Any, Spoilt);
}
