using Floorplan.Language.Quantities;
using Floorplan.Model;
using Floorplan.Model.Stations;

namespace Floorplan.Drawing.Sheets.PowerLightAir;

/// <summary>The stations that need power.</summary>
internal static class PowerNeeds
{
    public static IEnumerable<(Station Station, Need Need)> Of(Plan plan) =>
        plan.Stations.SelectMany(s => s.Needs.Where(n => n.Kind == NeedKind.Power).Select(n => (s, n)));

    /// <summary><c>230 V 6 kW</c>, <c>400 V 6 kW three-phase</c>, <c>power</c> when the plan says no figure.</summary>
    public static string Text(Need need, UnitSystem units)
    {
        var amounts = new[] { need.At, need.Amount }.OfType<Quantity>().Concat(need.Others).Select(q => QuantityText.Of(q, units)).Distinct();
        string text = string.Join(' ', amounts.Concat(need.Phases switch { 1 => ["single-phase"], 3 => ["three-phase"], _ => (string[])[] }));
        return text.Length == 0 ? "power" : text;
    }
}
