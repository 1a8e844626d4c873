using Floorplan.Language.Quantities;
using Floorplan.Language.Words.Terms;
using Floorplan.Model;
using Floorplan.Model.Services;
using Floorplan.Sizing.Power.Loads;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Power.Circuits;

/// <summary>Sizes each circuit by the practice of the plan's code.</summary>
internal sealed class CircuitSizer(Plan plan, Workings workings)
{
    /// <summary>IEC 60364-4-41, 411.3.3, in A.</summary>
    private const double LargestGuardedSocket = 32;

    private static readonly Source SumSource = new("arithmetic: everything on the circuit at once", Origin.OwnAssumption);
    private static readonly Source SaidSource = new("rating of the outlets of the circuit, as the plan says it", Origin.OwnAssumption);

    private readonly ILookup<string, Outlet> outlets =
        plan.Services.OfType<Outlet>().Where(o => o.Circuit.Length > 0).ToLookup(o => o.Circuit, StringComparer.Ordinal);

    private readonly ILookup<string, Outlet> byId = plan.Services.OfType<Outlet>().ToLookup(o => o.Id, StringComparer.Ordinal);

    private readonly AirAround air = AirAround.Of(plan, workings.Units);

    private bool Us => plan.Head.Code == CodeChoice.Us;

    public SizedCircuit Of(CircuitGroup group)
    {
        string of = "circuit " + group.Name;
        var largest = group.Loads.MaxBy(l => l.Draws.Value)!;
        int phases = group.Loads.Max(l => l.Phases);
        var current = workings.Of(
            "current of the circuit", of, group.Loads.Sum(l => l.Current.Value), Measure.Current, "sum of the currents of its loads",
            WorkingText.Sum([.. group.Loads.Select(l => workings.Fine(l.Current.Value, Measure.Current))]), SumSource,
            [.. group.Loads.Select(l => FigureInput.Of(l.Current))]);
        var draws = workings.Of(
            "draw of the circuit", of, group.Loads.Sum(l => l.Draws.Value), Measure.ApparentPower, "sum of what its loads draw",
            WorkingText.Sum([.. group.Loads.Select(l => workings.Fine(l.Draws.Value, Measure.ApparentPower))]), SumSource,
            [.. group.Loads.Select(l => FigureInput.Of(l.Draws))]);
        List<Outlet> sockets = group.IsProposed
            ? [.. group.Loads.Where(l => l.Kind == PowerLoadKind.Outlet).SelectMany(l => byId[l.Id].Take(1))]
            : [.. outlets[group.Name]];
        var circuit = new SizedCircuit(group.Name, group.IsProposed, group.Panel, group.Loads, largest.Volts, phases, current, draws)
        {
            SaidBreaker = Said(of, sockets),
            Guard = Guard(sockets),
            Length = group.Panel is { } panel ? CableRoute.Of(panel, of, group.Loads, workings) : null,
        };
        return Us
            ? new UsCircuit(workings, air).Sized(circuit, sockets.Count > 0)
            : new IecCircuit(workings, air).Sized(circuit, sockets.Count > 0);
    }

    /// <summary>The largest, since smaller outlets may stand on a larger breaker where a code allows it.</summary>
    private Figure? Said(string of, List<Outlet> sockets)
    {
        var said = sockets.SelectMany(o => o.Ratings.Where(r => r.Unit.Kind == QuantityKind.Current && r.Base > 0)
            .Select(r => (Outlet: o, Amperes: r))).ToList();
        if (said.Count == 0)
        {
            return null;
        }

        var most = said.MaxBy(s => s.Amperes.Base);
        string text = QuantityText.Of(most.Amperes, workings.Units);
        return workings.Of(
            "breaker said", of, most.Amperes.Base, Measure.Current, "the largest rating of its outlets", text, SaidSource,
            FigureInput.Said("outlet " + most.Outlet.Id, text, most.Outlet.Span));
    }

    private string Guard(List<Outlet> sockets)
    {
        bool guarded = sockets.Exists(o => o.Guard is not null);
        return Us
            ? sockets.Exists(o => o.Guard == FaultGuard.Rcd) && !sockets.Exists(o => o.Guard == FaultGuard.Gfci) ? "RCD"
                : guarded || sockets.Exists(o => o.Room?.WashedDown == true) ? "GFCI"
                : ""
            : guarded || sockets.Exists(o => o.Ratings.Where(r => r.Unit.Kind == QuantityKind.Current)
                .All(r => r.Base <= LargestGuardedSocket)) ? "30 mA" : "";
    }
}
