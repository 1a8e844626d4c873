using Floorplan.Checks.Limits;
using Floorplan.Language.Diagnostics;
using Floorplan.Model;
using Floorplan.Sizing.Working;

namespace Floorplan.Cli.Output.RulePages;

/// <summary>A published figure as rule pages print it, in both unit systems, since a page belongs to no plan.</summary>
internal static class LimitFigure
{
    /// <summary><c>7.6 m (24.9 ft)</c>.</summary>
    public static string Value(RuleLimit limit) => LimitUnits.Both(limit.Value, limit.Unit);

    /// <summary><c>in us-md, for poultry, plant retail</c>, or <c>anywhere</c>.</summary>
    public static string Scope(RuleLimit limit)
    {
        var scope = limit.Source.Scope;
        string[] parts =
        [
            .. Part("in ", scope.Places),
            .. Part("for ", [.. scope.Trades.Select(t => t.Word())]),
            .. Part("plant ", [.. scope.Plants.Select(p => p.ToString().ToLowerInvariant())]),
            .. Part("code ", [.. limit.Codes.Select(c => c.Word())]),
        ];
        return parts.Length == 0 ? "anywhere" : string.Join(", ", parts);
    }

    /// <summary>What a finding against it weighs where it binds.</summary>
    public static Severity Weight(RuleLimit limit) => limit.Severity < limit.Source.Heaviest ? limit.Severity : limit.Source.Heaviest;

    public static string Kind(Force force) => force switch
    {
        Force.ModelCode => "model code",
        Force.Measured => "bodies, physics",
        _ => force.ToString().ToLowerInvariant(),
    };

    private static string[] Part(string word, IReadOnlyList<string> words)
        => words.Count == 0 ? [] : [word + string.Join(" or ", words)];
}
