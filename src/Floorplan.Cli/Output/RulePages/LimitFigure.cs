using Floorplan.Checks.Limits;
using Floorplan.Model;

namespace Floorplan.Cli.Output.RulePages;

/// <summary>A published figure as rule pages print it, in both unit systems, since a page belongs to no plan.</summary>
internal static class LimitFigure
{
    /// <summary><c>7.6 m (24.9 ft)</c>.</summary>
    public static string Value(RuleLimit limit) => LimitUnits.Both(limit.Value, limit.Unit);

    /// <summary><c>code us</c>, <c>code us or eu</c>, or <c>any code</c>.</summary>
    public static string Codes(RuleLimit limit)
    {
        string[] names = [.. limit.Codes.Select(c => c.Word())];
        return names.Length == 0 ? "any code" : "code " + string.Join(" or ", names);
    }
}
