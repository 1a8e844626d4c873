using System.Text.RegularExpressions;

namespace Floorplan.Tests.Checks.Support;

/// <summary>A plan with other words of place and trade in its head.</summary>
internal static partial class Headed
{
    /// <param name="head">Such as <c>country za, trade poultry</c>, for what the plan says of code, country, trade and plant.</param>
    public static string With(this string plan, string head)
        => Units().Replace(Said().Replace(plan, ""), m => $"{m.Value}  {head}\n", 1);

    [GeneratedRegex("^  (?:code|country|trade|plant) .*\\n", RegexOptions.Multiline)]
    private static partial Regex Said();

    [GeneratedRegex("^  units .*\\n", RegexOptions.Multiline)]
    private static partial Regex Units();
}
