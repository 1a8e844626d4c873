using Floorplan.Language.Quantities;
using Floorplan.Model;
using Floorplan.Model.Stations;

namespace Floorplan.Drawing.Sheets.PowerLightAir;

/// <summary>The stations that need power.</summary>
internal static class PowerNeeds
{
    public static IEnumerable<(Station Station, Need Need)> Of(Plan plan) =>
        plan.Stations.SelectMany(s => s.Needs.Where(n => n.Kind == NeedKind.Power).Select(n => (s, n)));

    /// <summary><c>230 V 6 kW</c>, <c>power</c> when the plan says no figure.</summary>
    public static string Text(Need need, UnitSystem units)
    {
        string text = string.Join(' ', new[] { need.At, need.Amount }.OfType<Quantity>().Select(q => QuantityText.Of(q, units)).Distinct());
        return text.Length == 0 ? "power" : text;
    }
}
