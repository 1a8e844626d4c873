using Floorplan.Sizing.Power.Loads;

namespace Floorplan.Checks.Rules.PowerAndLight;

/// <summary>What findings call a load: <c>Drum plucker (plucker)</c>.</summary>
internal static class NamedLoad
{
    public static string Of(PowerLoad load)
        => load.Name.Contains(load.Id, StringComparison.Ordinal) || load.Kind == PowerLoadKind.Light
            ? load.Name
            : $"{load.Name} ({load.Id})";

    public static string All(IEnumerable<PowerLoad> loads)
    {
        const int Most = 3;
        List<string> names = [.. loads.Select(Of).Distinct()];
        return names.Count <= Most + 1
            ? Framework.Named.List(names)
            : Framework.Named.List([.. names.Take(Most), FormattableString.Invariant($"{names.Count - Most} more")]);
    }

    /// <summary>Ids of loads and of what else a finding is about, each once.</summary>
    public static IReadOnlyList<string> Things(IEnumerable<PowerLoad> loads, params IEnumerable<string> more)
        => [.. loads.Select(l => l.Id).Concat(more).Distinct(StringComparer.Ordinal)];
}
