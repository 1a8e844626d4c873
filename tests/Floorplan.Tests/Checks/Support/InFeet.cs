using System.Collections;
using System.Reflection;
using System.Text.RegularExpressions;
using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax;
using Floorplan.Language.Syntax.Values;
using Floorplan.Language.Text;

namespace Floorplan.Tests.Checks.Support;

/// <summary>
/// A metric plan made a feet plan of the same sizes: bare lengths get their unit, and <c>units</c> says feet. Weights, flows and
/// temperatures stay as written, so that whatever prints them must change their units.
/// </summary>
internal static partial class InFeet
{
    public static string Of(string plan)
    {
        var tree = SyntaxTree.Parse(new SourceText(plan, "test"));
        if (tree.Units == UnitSystem.Feet)
        {
            return plan;
        }

        string text = plan;
        foreach (int end in Lengths(tree.Statements, []).Select(l => l.Span.Start + l.Span.Length).Distinct()
            .Where(e => char.IsDigit(plan[e - 1])).OrderDescending())
        {
            text = text.Insert(end, " mm");
        }

        return Units().IsMatch(text) ? Units().Replace(text, "${before}feet") : PlanLine().Replace(text, "$0\n  units feet", 1);
    }

    private static IEnumerable<LengthSyntax> Lengths(object? node, HashSet<object> seen)
    {
        if (node is null or string
            || node.GetType().IsPrimitive
            || node.GetType().IsEnum
            || (!node.GetType().IsValueType && !seen.Add(node)))
        {
            return [];
        }

        return node switch
        {
            LengthSyntax length => [length],
            IEnumerable many => many.Cast<object?>().SelectMany(m => Lengths(m, seen)),
            _ when node.GetType().FullName!.StartsWith("Floorplan.Language.Syntax", StringComparison.Ordinal)
                || node.GetType().FullName!.StartsWith("System.ValueTuple", StringComparison.Ordinal)
                => Parts(node).SelectMany(p => Lengths(p, seen)),
            _ => [],
        };
    }

    private static IEnumerable<object?> Parts(object node) => node.GetType().GetProperties(BindingFlags.Public | BindingFlags.Instance)
        .Where(p => p.GetIndexParameters().Length == 0).Select(p => p.GetValue(node))
        .Concat(node.GetType().GetFields(BindingFlags.Public | BindingFlags.Instance).Select(f => f.GetValue(node)));

    [GeneratedRegex(@"^(?<before>[ \t]+units[ \t]+)metric\b", RegexOptions.Multiline)]
    private static partial Regex Units();

    [GeneratedRegex("^plan .*$", RegexOptions.Multiline)]
    private static partial Regex PlanLine();
}
