using System.Collections.Frozen;
using Floorplan.Checks.Findings;
using Floorplan.Checks.Limits;
using Floorplan.Checks.Measuring;
using Floorplan.Model;
using Floorplan.Model.Flows;
using Floorplan.Model.Services;
using Floorplan.Model.Stations;
using Stream = Floorplan.Model.Flows.Stream;

namespace Floorplan.Checks.Framework;

/// <summary>
/// What the check could not judge, and for want of what: a plan that finds nothing may only say too little. Console, report and sheet 9
/// print the same.
/// </summary>
/// <param name="Rules">Rules that apply to the plan's kind of shell, but those of the file itself.</param>
/// <param name="Missing">Those that had nothing to look at, each with what is missing, in the order of the catalogue.</param>
public sealed record NotJudged(int Rules, IReadOnlyList<(string Rule, string Why)> Missing)
{
    private static readonly FrozenDictionary<string, Func<Plan, string?>> Wanted = Wants().ToFrozenDictionary();

    /// <summary>
    /// <c>72 of 78 rules had something to look at; not judged: hitch-load, too-heavy (no weights); falls-behind (no work times)</c>.
    /// </summary>
    public string Text => FormattableString.Invariant($"{Rules - Missing.Count} of {Rules} rules had something to look at")
        + (Missing.Count == 0 ? "" : "; not judged: " + string.Join(
            "; ", Missing.GroupBy(m => m.Why).Select(g => $"{string.Join(", ", g.Select(m => m.Rule))} ({g.Key})")));

    public static NotJudged Of(Plan plan, IReadOnlyList<Finding> findings)
    {
        var limits = new PlanLimits(plan);
        var found = findings.Select(f => f.Rule).ToHashSet(StringComparer.Ordinal);

        // A rule of the day does not run without one, and could.
        var applying = RuleCatalogue.All
            .Where(r => r.Group != RuleGroup.File && (r.Group == RuleGroup.TheDay || r.AppliesTo(plan))).ToList();
        return new NotJudged(applying.Count, [
            .. from rule in applying
               where !found.Contains(rule.Name)
               let why = Wanted.GetValueOrDefault(rule.Name)?.Invoke(plan)
                   ?? (rule.AppliesTo(plan) ? NoFigure(rule, limits) : "no day")
               where why is not null
               select (rule.Name, why),
        ]);
    }

    /// <summary>What the head leaves open, so that figures of one place or trade could not be chosen; null when it says all.</summary>
    public static string? NotChosen(PlanHead head)
    {
        string[] missing =
        [
            .. head.Code != CodeChoice.None && head.Country.Length == 0 ? ["`country`"] : Array.Empty<string>(),
            .. head.Trades.Count == 0 ? ["`trade`"] : Array.Empty<string>(),
            .. head.Code == CodeChoice.Us && head.Plant is null ? ["`plant`"] : Array.Empty<string>(),
        ];
        return missing.Length == 0 ? null
            : $"the plan does not say its {Named.List([.. missing])}, so that figures of one place, trade or plant do not bind it";
    }

    private static string? NoFigure(Rule rule, PlanLimits limits) => rule.Limits.Count > 0
        && rule.Limits.Select(l => l.Key).Distinct().All(key => limits.Find(rule, key) is null)
            ? "no figure for this place and trade"
            : null;

    private static IEnumerable<KeyValuePair<string, Func<Plan, string?>>> Wants() =>
    [
        .. Each(p => p.Stations.Any(s => s.WeightFull is not null || s.WeightEmpty is not null || s.Volume is not null), "no weights",
            "hitch-load", "axle-overloaded", "floor-overloaded", "too-heavy"),
        .. Each(p => p.Day is not null, "no day", "crew-overworked", "crew-cannot-be-there", "bin-fills-up",
            "step-without-figure"),
        .. Each(p => p.Day is not null && p.Stations.Any(s => s.WorkEach is not null || s.Cycle is not null || s.Stays is not null),
            "no day with work times", "falls-behind", "queue-overflows", "store-too-small"),
        .. Each(p => p.Stations.Any(s => s.Stays is not null), "no `stays`", "not-long-enough", "chill-too-slow"),
        .. Each(p => p.Day is { Crew.Count: > 0 }, "no crew", "toilet-missing", "toilets-too-few", "changing-place-missing",
            "hand-sinks-too-few"),
        .. Each(p => Flows(p, Stream.Product), "no product flow", "product-goes-back", "product-through-dirtier", "doubles-back"),
        .. Each(p => Flows(p, Stream.Waste), "no waste flow", "waste-meets-product", "waste-through-clean"),
        .. Each(p => Flows(p, Stream.People), "no people flow", "staff-crosses-back"),
        .. Each(p => p.Stations.Any(s => s.IsSterilizer || s.Needs.Any(n => n.Kind == NeedKind.Sterilizer)), "no sterilizer",
            "sterilizer-too-far", "sterilizer-too-cool"),
        .. Each(p => p.Services.OfType<Hose>().Any(), "no hoses", "hose-misses-floor"),
        .. Each(p => p.Stations.Any(Chemicals.AreKeptIn), "no store of chemicals", "eyewash-too-far"),
        .. Each(p => p.Services.OfType<WaterPoint>().Any(), "no water points", "sink-not-served", "supply-too-small"),
        .. Each(p => p.Services.OfType<Drain>().Any(), "no drains", "drain-too-few", "drain-pipe-too-small", "drain-line-uphill",
            "toilet-drain-joins", "fall-not-possible"),
        .. Each(p => p.Stations.Any(s => s.Needs.Count > 0), "no `needs`", "water-too-far", "drain-too-far"),
        .. Each(p => p.Services.OfType<Panel>().Any(), "no panel", "panel-space", "panel-too-small", "voltage-mismatch", "voltage-drop"),
        .. Each(p => p.Services.OfType<Outlet>().Any(), "no outlets", "outlet-unprotected"),
        .. Each(p => p.Services.OfType<Switch>().Any(), "no switches", "switch-out-of-reach"),
        .. Each(p => LitRooms.Of(p).Count > 0, "no light said", "too-dark", "light-missing"),
        .. Each(p => p.Services.OfType<AirPoint>().Any(), "no fans", "too-little-air", "air-runs-to-clean"),
        .. Each(p => p.Rails.Count > 0, "no rails", "rail-height"),
        .. Each(p => p.Stations.Any(s => s.Workers.Count > 0), "no workers", "out-of-reach", "nowhere-to-stand"),
        .. Each(p => p.Stations.Any(s => s.Workers.Count > 0 && (s.WorkEach is not null || s.WorkKind is not null)),
            "no work times or kinds", "bench-height"),
        .. Each(p => Legs(p).Any(l => l.Carriage.Kind == CarriageKind.Hand), "nothing carried by hand", "hand-carry-too-far"),
        .. Each(
            p => Legs(p).Any(l => l.Carriage.Kind == CarriageKind.Hand)
                && (p.Head.Products.Any(x => x.WeightEach is not null) || Legs(p).Any(l => l.Carriage.LoadKilograms is not null)),
            "no load by hand with a weight", "lift-too-heavy"),
        .. Each(p => Legs(p).Any(l => l.Carriage.Kind == CarriageKind.Trolley), "no trolleys", "trolley-cannot-turn"),
        .. Each(p => p.Shell.GroundBelowFloor is not null, "no ground said", "step-at-door"),
        .. Each(p => p.Shell.WallLiningOf.Length > 0 || p.Rooms.Any(r => r.Finishes.ContainsKey("walls")), "no lining named",
            "hot-work-near-lining"),
        .. Each(p => p.Openings.Any(o => o.InShell), "no openings", "cuts-frame", "openings-too-close", "wall-cut-too-much"),
    ];

    private static IEnumerable<KeyValuePair<string, Func<Plan, string?>>> Each(Func<Plan, bool> has, string missing, params string[] rules)
        => rules.Select(rule => KeyValuePair.Create<string, Func<Plan, string?>>(rule, plan => has(plan) ? null : missing));

    private static bool Flows(Plan plan, Stream stream) => plan.Flows.Any(f => f.Stream == stream);

    private static IEnumerable<Leg> Legs(Plan plan) => plan.Flows.SelectMany(f => f.Legs);
}
