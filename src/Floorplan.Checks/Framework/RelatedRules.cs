namespace Floorplan.Checks.Framework;

/// <summary>Which rules are read together: those about one matter, and those that give way to one another.</summary>
public static class RelatedRules
{
    /// <summary>Names of rules about one matter, line by line; a rule may stand in several.</summary>
    public static IReadOnlyList<IReadOnlyList<string>> Matters { get; } =
    [
        ["outside-shell", "overlap", "headroom", "room-too-small"],
        ["clear-space-blocked", "door-blocked", "panel-space", "sink-blocked", "person-in-way"],
        ["will-not-go-in", "trolley-cannot-turn", "aisle-too-narrow", "door-blocked"],
        ["product-goes-back", "product-through-dirtier", "doubles-back", "rooms-not-separated"],
        ["waste-meets-product", "waste-through-clean", "way-out-for-waste-missing", "raw-returns-cross", "supplies-through-dirty"],
        ["way-out-for-waste-missing", "bin-behind-wall"],
        ["unwashed-entry", "staff-crosses-back", "crew-through-dirty", "changing-place-missing", "hand-sink-missing"],
        ["outer-door-stays-open", "rooms-not-separated", "toilet-opens-on-food"],
        ["toilet-missing", "toilets-too-few", "toilet-opens-on-food", "toilet-drain-joins", "toilet-not-served", "changing-place-missing"],
        ["air-runs-to-clean", "too-little-air", "steam-without-extract"],
        ["cooling-too-small", "cold-room-without-unit", "cold-room-too-warm", "chill-too-slow", "store-too-small"],
        ["drain-runs-to-clean", "toilet-drain-joins"],
        ["sterilizer-missing", "sterilizer-too-far", "sterilizer-too-cool"],
        ["finish-missing", "unknown-finish", "room-without-drain"],
        ["out-of-reach", "bench-height", "rail-height", "switch-out-of-reach"],
        ["elbow-room", "nowhere-to-stand", "room-too-small"],
        ["hand-carry-too-far", "lift-too-heavy"],
        ["water-too-far", "drain-too-far", "sink-not-served"],
        ["room-without-drain", "drain-too-few", "fall-not-possible", "hose-misses-floor"],
        ["hand-sink-missing", "hand-sink-too-far", "hand-sinks-too-few", "sink-not-served", "sink-blocked"],
        ["hot-water-short", "supply-too-small", "waste-tank-too-small"],
        ["drain-pipe-too-small", "drain-line-uphill", "fall-not-possible"],
        ["air-gap-missing", "backflow-guard-missing"],
        ["eyewash-too-far", "hand-sink-too-far", "chemicals-near-food"],
        ["panel-space", "outlet-unprotected", "switch-out-of-reach"],
        ["circuit-overloaded", "voltage-mismatch", "voltage-drop", "panel-too-small"],
        ["light-missing", "too-dark", "lamps-too-few"],
        ["exit-too-far", "one-exit-only", "exit-door-narrow", "exit-locks-in", "step-at-door", "aisle-too-narrow"],
        ["cuts-frame", "openings-too-close", "wall-cut-too-much", "hot-work-near-lining"],
        ["floor-overloaded", "too-heavy", "axle-overloaded", "hitch-load", "too-wide-for-road", "too-high-for-road"],
        ["falls-behind", "store-too-small", "bin-fills-up", "crew-cannot-be-there", "crew-overworked", "step-without-figure"],
        ["not-long-enough", "chill-too-slow", "queue-overflows", "store-too-small"],
        ["unused", "unreachable"],
        ["unknown-rule", "limit-does-not-fit", "accepts-nothing"],
    ];

    /// <summary>In the order of the catalogue.</summary>
    public static IReadOnlyList<Rule> Of(Rule rule)
    {
        var names = Matters.Where(m => m.Contains(rule.Name)).SelectMany(m => m).Concat(Named(rule)).ToHashSet();
        return [.. RuleCatalogue.All.Where(r => r != rule && (names.Contains(r.Name) || Named(r).Contains(rule.Name)))];
    }

    private static IEnumerable<string> Named(Rule rule) => rule.FollowsFrom.Select(c => c.Rule);
}
