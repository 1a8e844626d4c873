using Floorplan.Language.Quantities;
using Floorplan.Model;
using Floorplan.Sizing.Power.Formulas;
using Floorplan.Sizing.Power.Loads;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Power.Sizes;

/// <summary>What of the connected load is on at once, by the factors of the practice.</summary>
internal static class DemandLoad
{
    /// <summary>US: a quarter of the largest motor more.</summary>
    private const double MotorExtra = 0.25;

    public static Figure Of(string of, IReadOnlyList<PowerLoad> loads, CodeChoice code, Workings workings)
        => code == CodeChoice.Us ? ByUs(of, loads, workings) : ByDiversity(of, loads, workings);

    private static Figure ByUs(string of, IReadOnlyList<PowerLoad> loads, Workings workings)
    {
        double[] machines = Of(loads, PowerLoadKind.Machine, PowerLoadKind.Motor, PowerLoadKind.TankHeater, PowerLoadKind.InstantHeater);
        double rest = Of(loads, PowerLoadKind.Light, PowerLoadKind.Outlet).Sum();
        double motor = MotorExtra * Of(loads, PowerLoadKind.Motor).DefaultIfEmpty(0).Max();
        double kitchen = KitchenDemand.Of(machines);
        return workings.Of(
            "demand load", of, kitchen + rest + motor, Measure.ApparentPower,
            "machines and water heaters x factor by their number, not less than the two largest + lamps and outlets + a quarter of the "
                + "largest motor",
            $"{Kva(machines.Sum())} x {QuantityText.Plain(KitchenDemand.Factor(machines.Length))} (at least "
                + $"{Kva(machines.OrderDescending().Take(2).Sum())}) + {Kva(rest)} + {Kva(motor)}",
            PowerSources.UsDemand, Inputs(loads));

        string Kva(double va) => workings.Fine(va, Measure.ApparentPower);
    }

    private static Figure ByDiversity(string of, IReadOnlyList<PowerLoad> loads, Workings workings)
    {
        double machines = Diversity.Machines(Of(loads, PowerLoadKind.Machine, PowerLoadKind.Motor));
        double instant = Diversity.InstantHeaters(Of(loads, PowerLoadKind.InstantHeater));
        double tanks = Of(loads, PowerLoadKind.TankHeater).Sum();
        double sockets = Diversity.Sockets(Of(loads, PowerLoadKind.Outlet));
        double light = Of(loads, PowerLoadKind.Light).Sum();
        return workings.Of(
            "demand load", of, machines + instant + tanks + sockets + (Diversity.Light * light), Measure.ApparentPower,
            "machines (100, 80, 60 %) + instant heaters (100, 100, 25 %) + tank heaters + sockets (100, 75 %) + 90 % of lamps",
            $"{Kva(machines)} + {Kva(instant)} + {Kva(tanks)} + {Kva(sockets)} + 0.9 x {Kva(light)}",
            PowerSources.Diversity, Inputs(loads));

        string Kva(double va) => workings.Fine(va, Measure.ApparentPower);
    }

    private static FigureInput[] Inputs(IReadOnlyList<PowerLoad> loads) => [.. loads.Select(l => FigureInput.Of(l.Draws))];

    private static double[] Of(IReadOnlyList<PowerLoad> loads, params ReadOnlySpan<PowerLoadKind> kinds)
    {
        var wanted = kinds.ToArray();
        return [.. loads.Where(l => wanted.Contains(l.Kind)).Select(l => l.Draws.Value)];
    }
}
