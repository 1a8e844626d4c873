using Floorplan.Sizing;
using Floorplan.Sizing.Trailers;
using Floorplan.Tests.Checks.Support;
using Xunit;

namespace Floorplan.Tests.Sizing.Trailers;

public sealed class TankStatesTests
{
    /// <summary>Of the trailer of T-ex5: coupling at 0, box 1800 kg at 3.2 m, axles at 3.6 m; weights in kg at m.</summary>
    private static readonly (double Empty, double Full, double At)[] Tanks = [(60, 400, 1.5), (150, 900, 4.2), (40, 300, 4.9)];

    /// <summary>
    /// Each of the eight states by hand, moments about the axles instead of the coupling: what the hitch carries is the sum of each weight
    /// x its distance before the axles / 3.6 m.
    /// </summary>
    [Fact]
    public void No_way_of_filling_the_tanks_loads_the_hitch_more_or_less()
    {
        var shares = Enumerable.Range(0, 8).Select(full =>
        {
            var parts = Tanks.Select((t, i) => (Kg: (full & (1 << i)) != 0 ? t.Full : t.Empty, t.At)).Append((1800, 3.2)).ToList();
            return parts.Sum(p => p.Kg * (3.6 - p.At)) / 3.6 / parts.Sum(p => p.Kg);
        }).ToList();

        var states = Facts().TankStates!;

        Assert.Equal(shares.Max(), states.Most.HitchShare.Value, 1e-9);
        Assert.Equal(shares.Min(), states.Least.HitchShare.Value, 1e-9);
        Assert.Equal(["Scald tank"], states.FullAtMost);
        Assert.Equal(["Chill tank", "Rear tank"], states.FullAtLeast.Order());
    }

    /// <summary>Statics a second way: hitch and axles hold the weight, and turn it about neither coupling nor end.</summary>
    [Fact]
    public void Hitch_and_axles_turn_nothing_about_two_points()
    {
        var facts = Facts();
        foreach (var load in (IEnumerable<TrailerLoad>)[.. facts.TrailerLoads, facts.TankStates!.Least, facts.TankStates.Most])
        {
            Assert.Equal(load.Total.Value, load.OnHitch.Value + load.OnAxles.Value, 1e-6);
            foreach (double point in new[] { 0, 5700.0 })
            {
                double held = (load.OnHitch.Value * (0 - point)) + (load.OnAxles.Value * (3600 - point));
                Assert.Equal(load.Total.Value * (load.ToWeight.Value - point), held, 1e-3);
            }
        }
    }

    [Fact]
    public void A_trailer_with_nothing_to_fill_has_no_states() => Assert.Null(Facts(full: false).TankStates);

    private static PlanFacts Facts(bool full = true)
    {
        string Weight(int i) => full ? $"{Tanks[i].Empty} kg empty, {Tanks[i].Full} kg full" : $"{Tanks[i].Full} kg";
        return CheckedPlan.Facts(CheckedPlan.Plan($"""
            plan "Trailer"
              units metric
              code none
            shell trailer 5 m x 2.2 m x 2.4 m
              walls  50
              hitch  west, 700 ahead
              axles  2, 3600 from hitch
              weight 1800 kg empty
            room work "Work room" dry from west to east
            station scald "Scald tank" in work
              size 600 x 600 x 900
              place against north wall, 450 from west
              weight {Weight(0)}
            station chill "Chill tank" in work
              size 1200 x 600 x 900
              place against north wall, 2850 from west
              weight {Weight(1)}
            station rear "Rear tank" in work
              size 600 x 600 x 900
              place against south wall, 3850 from west
              weight {Weight(2)}
            """));
    }
}
