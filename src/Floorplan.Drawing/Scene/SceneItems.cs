namespace Floorplan.Drawing.Scene;

/// <summary>A place on paper: millimetres, x right, y down from the top left corner of the sheet.</summary>
public readonly record struct PaperPoint(double X, double Y)
{
    public static PaperPoint operator +(PaperPoint a, PaperPoint b) => new(a.X + b.X, a.Y + b.Y);

    public static PaperPoint operator -(PaperPoint a, PaperPoint b) => new(a.X - b.X, a.Y - b.Y);
}

/// <summary>A line's look: width in paper mm, colour as <c>#RRGGBB</c>, dash pattern in paper mm or null.</summary>
public sealed record Pen(double Width, string Colour = "#000000", IReadOnlyList<double>? Dash = null);

/// <summary>Everything on a sheet is one of these, on a named layer. Writers only translate.</summary>
/// <param name="Layer">A name of <c>Conventions/Layers.cs</c>.</param>
/// <param name="Group">What it belongs to, for titles and tests: <c>station:gutting</c>; null for none.</param>
public abstract record SceneItem(string Layer, string? Group);

public sealed record LineItem(PaperPoint From, PaperPoint To, Pen Pen, string Layer, string? Group = null) : SceneItem(Layer, Group);

public sealed record PolylineItem(
    IReadOnlyList<PaperPoint> Points, bool Closed, Pen Pen, string Layer, string? Group = null) : SceneItem(Layer, Group);

/// <summary>Counter-clockwise as seen on paper from start to end, in degrees from the positive x axis; 0 to 360 is a circle.</summary>
public sealed record ArcItem(
    PaperPoint Centre, double Radius, double StartDegrees, double EndDegrees, Pen Pen, string Layer, string? Group = null)
    : SceneItem(Layer, Group)
{
    /// <summary>The place on its circle at an angle.</summary>
    public PaperPoint At(double degrees)
    {
        // On paper y points down.
        var (sin, cos) = Math.SinCos(degrees * Math.PI / 180);
        return new PaperPoint(Centre.X + (Radius * cos), Centre.Y - (Radius * sin));
    }
}

/// <summary>Filled rings (even-odd), without outline.</summary>
public sealed record AreaItem(
    IReadOnlyList<IReadOnlyList<PaperPoint>> Rings, string Fill, string Layer, string? Group = null) : SceneItem(Layer, Group);

/// <summary>One line of text.</summary>
/// <param name="At">Anchor on the baseline.</param>
/// <param name="CapHeight">Height of capitals in paper mm (ISO 3098 h).</param>
/// <param name="Degrees">0 reads from the bottom, 90 reads from the right (turned counter-clockwise).</param>
public sealed record TextItem(
    string Text,
    PaperPoint At,
    double CapHeight,
    TextAnchor Anchor,
    string Layer,
    string? Group = null,
    double Degrees = 0,
    bool Bold = false,
    string Colour = "#000000") : SceneItem(Layer, Group);

public enum TextAnchor
{
    Start,
    Middle,
    End,
}
