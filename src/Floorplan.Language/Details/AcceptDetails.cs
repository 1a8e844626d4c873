using Floorplan.Language.Syntax.Values;

namespace Floorplan.Language.Details;

/// <summary>What an <c>accept</c> statement may say after its reason.</summary>
public static class AcceptDetails
{
    public static Detail<TextSyntax> By { get; } = Forms.Text("by", "who agreed", "who agreed", "by \"the inspector\"", "by \"the owner\"");

    public static IReadOnlyList<Detail> All { get; } = [By];
}
