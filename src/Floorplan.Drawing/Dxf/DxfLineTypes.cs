using System.Globalization;
using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Scene;

namespace Floorplan.Drawing.Dxf;

/// <summary>
/// The line types of one file: a name for each dash pattern that its lines and layers have. A name says the kind of line, its width on
/// paper in hundredths of a millimetre, and the scale, so that it means the same in every file of a set.
/// </summary>
internal sealed class DxfLineTypes
{
    public const string Continuous = "CONTINUOUS";

    private static readonly (string Name, Func<double, IReadOnlyList<double>> Dash)[] Kinds =
    [
        ("DASHED", Dashes.Dashed),
        ("DASH-DOT", Dashes.LongDashDot),
        ("DASH-2DOT", Dashes.LongDashDoubleDot),
        ("DOTTED", Dashes.Dotted),
    ];

    private readonly SortedDictionary<string, (string Name, IReadOnlyList<double> Dash)> _known = new(StringComparer.Ordinal);
    private readonly double _denominator;

    public DxfLineTypes(SheetScene sheet)
    {
        _denominator = sheet.Denominator;
        foreach (var dash in sheet.Items.Select(i => PenOf(i)?.Dash)
            .Concat(sheet.Items.Select(i => i.Layer).Distinct().Select(DxfLayers.DashOf)).OfType<IReadOnlyList<double>>())
        {
            _known.TryAdd(Key(dash), (NameOf(dash), dash));
        }
    }

    public int Count => _known.Count + 1;

    public string Name(Pen pen) => Name(pen.Dash);

    public string OfLayer(string layer) => Name(DxfLayers.DashOf(layer));

    public void Write(DxfPairs pairs)
    {
        Entry(pairs, Continuous, "solid", []);
        foreach (var (name, dash) in _known.Values)
        {
            Entry(pairs, name, $"on paper, mm: {Key(dash)}", dash.Count % 2 == 0 ? dash : [.. dash, .. dash]);
        }
    }

    public static Pen? PenOf(SceneItem item) => item switch
    {
        LineItem line => line.Pen,
        PolylineItem line => line.Pen,
        ArcItem arc => arc.Pen,
        _ => null,
    };

    private string Name(IReadOnlyList<double>? dash) => dash is null ? Continuous : _known[Key(dash)].Name;

    /// <summary>Two patterns of one name would be one line type to a reader, so what is of no kind has its lengths for a name.</summary>
    private string NameOf(IReadOnlyList<double> dash)
    {
        foreach (var (name, pattern) in Kinds)
        {
            double width = dash[0] / pattern(1)[0];
            if (Key(pattern(width)) == Key(dash))
            {
                return Plain(string.Create(CultureInfo.InvariantCulture, $"{name}-{width * 100:000.##}-{_denominator:0.##}"));
            }
        }

        return Plain(string.Create(CultureInfo.InvariantCulture, $"{Key(dash)}-{_denominator:0.##}"));
    }

    private static string Plain(string name) => name.Replace('.', '_').Replace(' ', '-');

    // Dashes are written as they are and gaps negative.
    private void Entry(DxfPairs pairs, string name, string description, IReadOnlyList<double> dash)
    {
        pairs.Add(0, "LTYPE").Add(2, name).Add(70, 0).Add(3, description).Add(72, 65).Add(73, dash.Count)
            .Add(40, dash.Sum() * _denominator);
        foreach (var (i, part) in dash.Index())
        {
            pairs.Add(49, (i % 2 == 0 ? part : -part) * _denominator);
        }
    }

    private static string Key(IReadOnlyList<double> dash)
        => string.Join(' ', dash.Select(d => d.ToString("0.###", CultureInfo.InvariantCulture)));
}
