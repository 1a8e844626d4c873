using Floorplan.Language.Quantities;
using Floorplan.Language.Words.Terms;
using Floorplan.Model;
using Floorplan.Model.Services;

namespace Floorplan.Sizing.Power.Panels;

/// <summary>Which voltages a panel gives.</summary>
/// <param name="Volts">Between lines; above 0.</param>
/// <param name="Phases">1 or 3.</param>
/// <param name="ToNeutral">From one line, in V.</param>
/// <param name="Lines">How many lines its circuits are shared out to.</param>
public sealed record PanelSystem(double Volts, int Phases, double ToNeutral, int Lines)
{
    /// <summary>Two voltages this near, as a share of the load's, are one supply: 220, 230 and 240 V.</summary>
    public const double Near = 0.10;

    private const double UsSplitFrom = 200;
    private const double UsSplitTo = 260;
    private const double ThreePhaseFrom = 345;

    /// <summary>US practice: 240 V with a middle, so 120 V from each line.</summary>
    public bool Split => Phases == 1 && Lines == 2;

    /// <summary>Voltage and phases of each way to connect to it.</summary>
    public IReadOnlyList<(double Volts, int Phases)> Gives => (Phases, Lines) switch
    {
        (3, _) => [(Volts, 3), (Volts, 1), (ToNeutral, 1)],
        (_, 2) => [(Volts, 1), (ToNeutral, 1)],
        _ => [(Volts, 1)],
    };

    /// <param name="panel">Null where the plan has none: then the usual one of the code.</param>
    public static PanelSystem Of(Panel? panel, CodeChoice code)
    {
        bool us = code == CodeChoice.Us;
        double said = panel?.Ratings.FirstOrDefault(r => r.Unit.Kind == QuantityKind.Voltage && r.Base > 0) is { Unit: not null } v
            ? v.Base
            : 0;
        int phases = panel?.Phases is { } p ? Number(p) : said >= ThreePhaseFrom ? 3 : 1;
        double volts = said > 0 ? said : (us, phases) switch { (true, 3) => 208, (true, _) => 240, (_, 3) => 400, _ => 230 };
        return phases == 3 ? new PanelSystem(volts, 3, volts / Formulas.LineCurrent.Root3, 3)
            : us && volts is >= UsSplitFrom and <= UsSplitTo ? new PanelSystem(volts, 1, volts / 2, 2)
            : new PanelSystem(volts, 1, volts, 1);
    }

    public static int Number(Phases phases) => phases == Language.Words.Terms.Phases.ThreePhase ? 3 : 1;

    /// <summary>The nearest voltage with these phases; null where it has no such phases.</summary>
    public double? Nearest(double volts, int phases)
    {
        var fits = Gives.Where(g => g.Phases == phases).Select(g => g.Volts).ToList();
        return fits.Count == 0 ? null : fits.MinBy(v => Math.Abs(v - volts));
    }

    /// <summary>How many lines a circuit takes.</summary>
    public int LinesOf(double volts, int phases) => phases == 3 ? Lines
        : Lines > 1 && Math.Abs(volts - ToNeutral) > Math.Abs(volts - Volts) ? 2
        : 1;

    /// <summary><c>120 and 240 V</c>.</summary>
    public string Text(UnitSystem units) => string.Join(
        " and ", Gives.OrderBy(g => g.Volts)
            .Select(g => QuantityText.Of(g.Volts, Measure.Voltage, units) + (g.Phases == 3 ? " three-phase" : "")).Distinct());
}
