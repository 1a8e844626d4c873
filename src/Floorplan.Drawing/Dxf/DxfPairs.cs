using System.Globalization;
using System.Text;
using Floorplan.Drawing.Scene;

namespace Floorplan.Drawing.Dxf;

/// <summary>The lines of a DXF file: a group code, then its value.</summary>
internal sealed class DxfPairs
{
    private readonly StringBuilder _text = new();

    public DxfPairs Add(int code, string value)
    {
        _text.Append(CultureInfo.InvariantCulture, $"{code,3}\n{value}\n");
        return this;
    }

    public DxfPairs Add(int code, int value) => Add(code, value.ToString(CultureInfo.InvariantCulture));

    /// <summary>Four decimals: a tenth of a micrometre, far below what a saw can do.</summary>
    public DxfPairs Add(int code, double value) => Add(code, (Math.Round(value, 4) + 0.0).ToString("0.0###", CultureInfo.InvariantCulture));

    /// <summary>x at the code, y at ten more, and a height of nothing at twenty more.</summary>
    public DxfPairs Point(int code, PaperPoint at) => Add(code, at.X).Add(code + 10, at.Y).Add(code + 20, 0.0);

    public override string ToString() => _text.ToString();
}
