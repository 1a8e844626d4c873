using Floorplan.Language.Quantities;
using Floorplan.Model.Services;
using Floorplan.Sizing.Power.Panels;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Power.Loads;

/// <summary>Voltage and phases of a load: its own, else those of an outlet of its circuit, else what the panel gives.</summary>
internal sealed record LoadVolts(double Volts, int Phases, FigureInput Input, bool Said)
{
    /// <summary>US: a larger load than this, in W, takes the higher voltage of the panel where its own is not said.</summary>
    private const double SmallLoad = 1800;

    /// <summary>From this voltage on a load without a word of phases is three-phase.</summary>
    private const double ThreePhaseFrom = 345;

    private static readonly Source Own = new("voltage not said: what the panel gives such a load", Origin.OwnAssumption);
    private static readonly Source OfOutlet = new("voltage not said: that of the outlet of its circuit", Origin.OwnAssumption);

    /// <param name="said">Of the thing itself.</param>
    /// <param name="phases">Of the thing itself; null when not said.</param>
    /// <param name="watts">About; 0 when not known.</param>
    public static LoadVolts Of(
        Quantity? said, int? phases, double watts, Outlet? outlet, PanelSystem system, UnitSystem units, Language.Text.SourceSpan span)
    {
        if (said is { Unit.Kind: QuantityKind.Voltage } own && own.Base > 0)
        {
            return new LoadVolts(
                own.Base, phases ?? Guess(own.Base), FigureInput.Said("voltage", QuantityText.Of(own, units), span), true);
        }

        if (outlet?.Ratings.FirstOrDefault(r => r.Unit.Kind == QuantityKind.Voltage && r.Base > 0) is { Unit: not null } rated)
        {
            int of = phases ?? (outlet.Phases is { } p ? PanelSystem.Number(p) : Guess(rated.Base));
            return new LoadVolts(
                rated.Base, of, FigureInput.Taken("voltage", QuantityText.Of(rated, units), OfOutlet), false);
        }

        double volts = phases == 3 || (system.Split && watts > SmallLoad) ? system.Volts : system.ToNeutral;
        return new LoadVolts(
            volts, phases ?? 1, FigureInput.Taken("voltage", QuantityText.Of(volts, Measure.Voltage, units), Own), false);
    }

    private static int Guess(double volts) => volts >= ThreePhaseFrom ? 3 : 1;
}
