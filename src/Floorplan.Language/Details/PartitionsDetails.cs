using Floorplan.Language.Syntax.Values;

namespace Floorplan.Language.Details;

/// <summary>What the partitions may say.</summary>
public static class PartitionsDetails
{
    public static Detail<LengthSyntax> Thickness { get; } = Forms.Length(
        "thickness", "how thick the walls between rooms are", "a thickness", "thickness 81", "thickness 101");

    public static Detail<LengthSyntax> Height { get; } = Forms.Length(
        "height",
        "how high they are",
        "a height",
        "height 2310",
        "height 2330");

    public static Detail<TextSyntax> Build { get; } = new(
        "build", "what they are built of", ["build \"sandwich panel\"", "build \"block\""], c => c.Words("what they are built of"));

    public static IReadOnlyList<Detail> All { get; } = [Thickness, Height, Build];
}
