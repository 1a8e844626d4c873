using Floorplan.Model.Services;
using Floorplan.Model.Stations;

namespace Floorplan.Drawing.Sheets.WaterAndDrainage;

/// <summary>All uses that one point serves with one kind of pipe.</summary>
/// <param name="Point">A water point, a heater or a drain.</param>
public sealed record PipeRun(PipeKind Kind, ServicePoint Point, IReadOnlyList<Station> Uses);
