using System.Globalization;
using Floorplan.Drawing.Scene;

namespace Floorplan.Drawing.Dxf;

/// <summary>The line types of one file: a name for each dash pattern that its lines have, in order of appearance.</summary>
internal sealed class DxfLineTypes
{
    public const string Continuous = "CONTINUOUS";

    private readonly Dictionary<string, (string Name, IReadOnlyList<double> Dash)> _known = [];

    public DxfLineTypes(IEnumerable<SceneItem> items)
    {
        foreach (var dash in items.Select(PenOf).Select(p => p?.Dash).OfType<IReadOnlyList<double>>())
        {
            _known.TryAdd(Key(dash), (string.Create(CultureInfo.InvariantCulture, $"DASH-{_known.Count + 1}"), dash));
        }
    }

    public int Count => _known.Count + 1;

    public string Name(Pen pen) => pen.Dash is { } dash ? _known[Key(dash)].Name : Continuous;

    public void Write(DxfPairs pairs, double denominator)
    {
        Entry(pairs, Continuous, "solid", [], denominator);
        foreach (var (name, dash) in _known.Values)
        {
            Entry(pairs, name, $"on paper, mm: {Key(dash)}", dash.Count % 2 == 0 ? dash : [.. dash, .. dash], denominator);
        }
    }

    public static Pen? PenOf(SceneItem item) => item switch
    {
        LineItem line => line.Pen,
        PolylineItem line => line.Pen,
        ArcItem arc => arc.Pen,
        _ => null,
    };

    // Dashes are written as they are and gaps negative.
    private static void Entry(DxfPairs pairs, string name, string description, IReadOnlyList<double> dash, double denominator)
    {
        pairs.Add(0, "LTYPE").Add(2, name).Add(70, 0).Add(3, description).Add(72, 65).Add(73, dash.Count).Add(40, dash.Sum() * denominator);
        foreach (var (i, part) in dash.Index())
        {
            pairs.Add(49, (i % 2 == 0 ? part : -part) * denominator);
        }
    }

    private static string Key(IReadOnlyList<double> dash)
        => string.Join(' ', dash.Select(d => d.ToString("0.###", CultureInfo.InvariantCulture)));
}
