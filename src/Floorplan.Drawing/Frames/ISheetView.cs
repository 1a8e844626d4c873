using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Labels;
using Floorplan.Drawing.Scene;

namespace Floorplan.Drawing.Frames;

/// <summary>A picture on a sheet: a plan, an unrolled wall. It is measured at candidate scales first, then drawn once.</summary>
public interface ISheetView
{
    /// <summary>Printed over the view; the scale is added.</summary>
    string Title { get; }

    /// <summary>Seen from above, so that the north arrow says something.</summary>
    bool IsPlan => true;

    /// <summary>A chart has none: neither its title nor a bar says a scale, and it is as large at any.</summary>
    bool HasScale => true;

    /// <summary>
    /// The share of its paper that has something on it, about, from 0 to 1: a wall has less on it than a floor. Own estimate.
    /// </summary>
    double Density => 0.68;

    /// <summary>The paper that it needs at 1:<paramref name="denominator"/>, with its dimension rows, without its title.</summary>
    PaperSpace Measure(double denominator);

    void Draw(ViewCanvas canvas);
}

/// <summary>Width and height on paper, mm.</summary>
public readonly record struct PaperSpace(double Width, double Height);

/// <summary>What a view draws with and where.</summary>
/// <param name="Labels">For every text that may move; the sheet places them when all views are drawn.</param>
/// <param name="Box">Exactly the size that the view asked for.</param>
public sealed record ViewCanvas(SceneBuilder Scene, LabelPlacer Labels, PaperBox Box, double Denominator, DrawingStandard Standard);
