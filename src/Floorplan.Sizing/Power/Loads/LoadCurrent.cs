using Floorplan.Language.Quantities;
using Floorplan.Sizing.Power.Formulas;
using Floorplan.Sizing.Power.Tables;
using Floorplan.Sizing.Uses;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Power.Loads;

/// <summary>What a machine or heater draws, from what the plan says of it.</summary>
internal static class LoadCurrent
{
    public static readonly Source ElectricInput = new(
        "kW are taken as electric input without a phase shift; a motor draws more than its kW, so write its hp or its A",
        Origin.OwnAssumption);

    private static readonly Source Said = new("arithmetic: what the plan says", Origin.OwnAssumption);

    private static readonly Source Apparent = new("arithmetic: volts x amperes, three-phase times the root of 3", Origin.CommonPractice);

    private static readonly Source UsForSingle = new(
        "NEC Table 430.248; no table of single-phase motors for 230/400 V was at hand", Origin.FoundInSecondaryCopy, Force.ModelCode);

    /// <summary>Whether the plan says horsepower, which is the shaft of a motor.</summary>
    public static bool IsMotor(ServiceUse use) => use.Amount is { Unit.Symbol: "hp" };

    /// <summary>Null where the plan says neither power nor current.</summary>
    public static (Figure Current, Figure Draws)? Of(ServiceUse use, string of, LoadVolts volts, bool us, Workings workings)
    {
        var said = new[] { use.Amount }.OfType<Quantity>().Concat(use.Written?.Others ?? []).ToList();
        if (said.Find(q => q.Unit.Kind == QuantityKind.Current) is { Unit: not null } amperes)
        {
            string text = QuantityText.Of(amperes, workings.Units);
            var current = workings.Of(
                "current", of, Math.Max(0, amperes.Base), Measure.Current, "current as the plan says it", text, Said,
                FigureInput.Said("current", text, use.Span));
            return (current, VoltAmperes(of, current, volts, workings));
        }

        if (said.Find(q => q.Unit.Kind == QuantityKind.Power) is not { Unit: not null } power)
        {
            return null;
        }

        var drawn = IsMotor(use) ? OfMotor(power, use, of, volts, us, workings) : OfInput(power, use, of, volts, workings);
        return (drawn, VoltAmperes(of, drawn, volts, workings));
    }

    public static Figure VoltAmperes(string of, Figure current, LoadVolts volts, Workings workings)
        => workings.Of(
            "draws", of, LineCurrent.VoltAmperes(current.Value, volts.Volts, volts.Phases), Measure.ApparentPower,
            "volts x current (three-phase: x 1.732)",
            $"{volts.Input.Text} x {workings.Fine(current.Value, Measure.Current)}{(volts.Phases == 3 ? " x 1.732" : "")}", Apparent,
            volts.Input, FigureInput.Of(current));

    private static Figure OfInput(Quantity power, ServiceUse use, string of, LoadVolts volts, Workings workings)
    {
        double watts = Math.Max(0, power.Base);
        string text = workings.Fine(watts, Measure.Power);
        return workings.Of(
            "current", of, LineCurrent.Amperes(watts, volts.Volts, volts.Phases), Measure.Current,
            "power / volts (three-phase: / 1.732 volts)", $"{text} / {(volts.Phases == 3 ? "1.732 x " : "")}{volts.Input.Text}",
            ElectricInput, FigureInput.Said("power", QuantityText.Of(power, workings.Units), use.Span), volts.Input);
    }

    private static Figure OfMotor(Quantity power, ServiceUse use, string of, LoadVolts volts, bool us, Workings workings)
    {
        double watts = Math.Max(0, power.Base);
        bool byUs = us || volts.Phases == 1;
        double amperes = byUs
            ? UsMotorCurrents.Amperes(Math.Max(0, (double)power.Number), volts.Volts, volts.Phases)
            : IecMotorCurrents.Amperes(watts, volts.Volts);
        var source = !byUs ? IecMotorCurrents.ThreePhase : us ? UsMotorCurrents.Source(volts.Phases) : UsForSingle;
        return workings.Of(
            "current", of, amperes, Measure.Current, "full-load current of the table, next larger motor, not the power at the shaft",
            $"{QuantityText.Of(power, workings.Units)} at {volts.Input.Text}{(volts.Phases == 3 ? " three-phase" : "")}", source,
            FigureInput.Said("motor", QuantityText.Of(power, workings.Units), use.Span), volts.Input);
    }
}
