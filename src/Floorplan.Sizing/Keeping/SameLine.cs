using Floorplan.Sizing.Simulation.Line;

namespace Floorplan.Sizing.Keeping;

/// <summary>
/// Whether two lines run alike. Records are compared whole, but for their lists, which are equal only as objects and so are compared one by
/// one: a property that is added later counts, and a list that is added later makes every two lines differ until it is compared here.
/// </summary>
internal static class SameLine
{
    public static bool Is(ProductLine a, ProductLine b) => ReferenceEquals(a, b) || (Bare(a) == Bare(b)
        && a.Moves.SequenceEqual(b.Moves)
        && a.Bins.SequenceEqual(b.Bins)
        && a.Breaks.SequenceEqual(b.Breaks)
        && a.Places.SequenceEqual(b.Places)
        && a.Rooms.SequenceEqual(b.Rooms)
        && Steps(a.Steps, b.Steps)
        && a.Later.Count == b.Later.Count && a.Later.Zip(b.Later).All(l => Lot(l.First, l.Second))
        && a.Crews.Count == b.Crews.Count && a.Crews.Zip(b.Crews).All(c => Crew(c.First, c.Second)));

    private static ProductLine Bare(ProductLine line)
        => line with { Steps = [], Moves = [], Crews = [], Bins = [], Breaks = [], Places = [], Rooms = [], Later = [] };

    private static bool Steps(IReadOnlyList<LineStep> a, IReadOnlyList<LineStep> b)
        => a.Count == b.Count && a.Zip(b).All(s => Step(s.First, s.Second));

    private static bool Lot(LineLot a, LineLot b)
        => a with { Steps = [], Moves = [] } == b with { Steps = [], Moves = [] } && Steps(a.Steps, b.Steps)
            && a.Moves.SequenceEqual(b.Moves);

    private static bool Step(LineStep a, LineStep b) => a with { Waste = [] } == b with { Waste = [] } && a.Waste.SequenceEqual(b.Waste);

    private static bool Crew(LineCrew a, LineCrew b) => a with { Helps = [] } == b with { Helps = [] } && a.Helps.SequenceEqual(b.Helps);
}
