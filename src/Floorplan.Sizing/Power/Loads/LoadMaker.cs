using Floorplan.Language.Quantities;
using Floorplan.Language.Words.Terms;
using Floorplan.Model;
using Floorplan.Model.Services;
using Floorplan.Sizing.Power.Formulas;
using Floorplan.Sizing.Power.Panels;
using Floorplan.Sizing.Sizes;
using Floorplan.Sizing.Uses;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Power.Loads;

/// <summary>Finds every load of a plan: machines, heaters, outlets without a machine, lamps.</summary>
internal sealed class LoadMaker(PlanFacts facts, PanelSystem system, Workings workings, List<NotSaid> missing)
{
    /// <summary>VA of an outlet that no machine hangs on.</summary>
    private const double OfOutlet = 180;

    /// <summary>Of a point on a wall that says none, in mm; own assumption.</summary>
    public const double UsualHeight = 1100;

    private static readonly Source OutletSource = new(
        "NEC 220.14(I): 180 VA for each outlet that nothing is named for; taken under other codes too", Origin.FromMemory, Force.ModelCode);

    private static readonly Source LampSource = new("lamps without a phase shift", Origin.OwnAssumption);

    private readonly Plan plan = facts.Plan;
    private readonly bool us = facts.Plan.Head.Code == CodeChoice.Us;
    private readonly ILookup<string, Outlet> outlets =
        facts.Plan.Services.OfType<Outlet>().Where(o => o.Circuit.Length > 0).ToLookup(o => o.Circuit, StringComparer.Ordinal);

    public IReadOnlyList<PowerLoad> All()
    {
        List<PowerLoad> loads = [.. OfUses()];
        var used = loads.Select(l => l.Circuit).ToHashSet(StringComparer.Ordinal);
        loads.AddRange(plan.Services.OfType<Outlet>().Where(o => o.Circuit.Length == 0 || !used.Contains(o.Circuit)).Select(OfAlone));
        loads.AddRange(Lamps());
        return loads;
    }

    private IEnumerable<PowerLoad> OfUses()
    {
        foreach (var group in facts.Power.Uses.GroupBy(u => u.ById, StringComparer.Ordinal))
        {
            foreach (var (index, use) in group.Index())
            {
                string of = index == 0 ? use.ById : FormattableString.Invariant($"{use.ById}, use {index + 1}");
                var volts = LoadVolts.Of(
                    use.At, PhasesOf(use), use.Amount?.Base ?? 0, outlets[use.Circuit].FirstOrDefault(), system, plan.Units, use.Span);
                if (LoadCurrent.Of(use, of, volts, us, workings) is var (current, draws))
                {
                    yield return Made(use, volts, current, draws);
                }
                else
                {
                    missing.Add(new NotSaid($"power of {use.ById}", Asked(use), use.Span));
                }
            }
        }
    }

    private string Asked(ServiceUse use) => use.Point is Heater
        ? $"{QuantityText.Of(system.Volts, Measure.Voltage, plan.Units)} 6 kW in heater {use.ById}"
        : $"needs power {QuantityText.Of(system.ToNeutral, Measure.Voltage, plan.Units)} 1.5 hp (a motor) or 1 kW in {use.ById}";

    private static int? PhasesOf(ServiceUse use) => use.Written?.Phases
        ?? ((use.Point as Heater)?.Phases is { } phases ? PanelSystem.Number(phases) : null);

    private static PowerLoad Made(ServiceUse use, LoadVolts volts, Figure current, Figure draws)
    {
        var kind = use.Point is Heater heater
            ? heater.Form == HeaterForm.Instant ? PowerLoadKind.InstantHeater : PowerLoadKind.TankHeater
            : LoadCurrent.IsMotor(use) ? PowerLoadKind.Motor : PowerLoadKind.Machine;
        return new PowerLoad(
            use.ById, use.Station?.Caption ?? "heater " + use.ById, kind, volts.Volts, volts.Phases, current, draws, use.Span)
        {
            SaysVolts = volts.Said,
            Room = use.Station?.Room ?? use.Point?.Room,
            At = use.Station?.Bounds.Centre ?? use.Point!.At,
            Height = use.Station?.Top.Millimetres ?? use.Point!.Height?.Millimetres ?? UsualHeight,
            Circuit = use.Circuit,
        };
    }

    private PowerLoad OfAlone(Outlet outlet)
    {
        var volts = LoadVolts.Of(null, null, OfOutlet, outlet, system, plan.Units, outlet.Span);
        double amperes = LineCurrent.Amperes(OfOutlet, volts.Volts, volts.Phases);
        string each = workings.Text(OfOutlet, Measure.ApparentPower);
        var current = workings.Of(
            "current", outlet.Id, amperes, Measure.Current, "VA of an outlet / volts",
            $"{each} / {(volts.Phases == 3 ? "1.732 x " : "")}{volts.Input.Text}", OutletSource,
            FigureInput.Taken("outlet", each, OutletSource), volts.Input);
        return new PowerLoad(
            outlet.Id, "outlet " + outlet.Id, PowerLoadKind.Outlet, volts.Volts, volts.Phases, current,
            LoadCurrent.VoltAmperes(outlet.Id, current, volts, workings), outlet.Span)
        {
            SaysVolts = outlet.Ratings.Any(r => r.Unit.Kind == QuantityKind.Voltage && r.Base > 0),
            Room = outlet.Room,
            At = outlet.At,
            Height = outlet.Height?.Millimetres ?? UsualHeight,
            Circuit = outlet.Circuit,
        };
    }

    private IEnumerable<PowerLoad> Lamps()
    {
        var switches = plan.Services.OfType<Switch>().Where(s => s.Room is not null && s.Circuit.Length > 0).ToLookup(s => s.Room!.Id);
        foreach (var light in facts.Lamps.Values.Where(l => l.Power.Value > 0))
        {
            var watts = light.Power;
            var volts = LoadVolts.Of(null, 1, 0, null, system, plan.Units, light.Room.Span);
            var current = workings.Of(
                "current of lamps", light.Room.Id, watts.Value / volts.Volts, Measure.Current, "power / volts",
                $"{workings.Fine(watts.Value, Measure.Power)} / {volts.Input.Text}", LampSource, FigureInput.Of(watts), volts.Input);
            yield return new PowerLoad(
                light.Room.Id, "lamps of " + light.Room.Label, PowerLoadKind.Light, volts.Volts, 1, current,
                LoadCurrent.VoltAmperes("lamps of " + light.Room.Id, current, volts, workings), light.Room.Span)
            {
                Room = light.Room,
                At = light.Room.Bounds.Centre,
                Height = light.Room.CeilingHeight.Millimetres,
                Circuit = switches[light.Room.Id].FirstOrDefault()?.Circuit ?? "",
            };
        }
    }
}
