using Floorplan.Cli.Input;
using Floorplan.Drawing.Sheets;
using Floorplan.Drawing.Svg;

namespace Floorplan.Cli.Output.Drawings;

/// <summary>The sheets of an examined plan as SVG text, for the gallery.</summary>
internal static class SheetFiles
{
    /// <param name="numbers">Null for all.</param>
    public static IReadOnlyList<(string Name, string Svg)> Draw(Examination examination, IReadOnlyCollection<int>? numbers = null)
    {
        var request = DrawingRequest.Of(examination);
        return [.. SheetSet.Draw(request, numbers).AsParallel().AsOrdered().Select(s => (s.Name, SvgWriter.Write(s)))];
    }
}
