using Floorplan.Language.Quantities;
using Floorplan.Language.Text;
using Floorplan.Model.Services;
using Floorplan.Model.Stations;

namespace Floorplan.Sizing.Uses;

/// <summary>One use of water, a drain, power or another service by one thing.</summary>
/// <param name="Station">What uses it; null when a hose or a heater does.</param>
/// <param name="Point">The hose or heater that uses it; null when a station does.</param>
/// <param name="Amount">Null when the plan does not say it.</param>
/// <param name="At">Temperature or voltage; null when the plan does not say it.</param>
/// <param name="IsWritten">The plan says it in <c>needs</c>; otherwise it follows from what the thing is.</param>
/// <param name="Span">Where the plan says it, or the statement of the thing.</param>
public sealed record ServiceUse(
    NeedKind Kind, Station? Station, ServicePoint? Point, Quantity? Amount, Quantity? At, bool IsWritten, SourceSpan Span)
{
    /// <summary>As the plan writes it; null where it does not.</summary>
    public Need? Written { get; init; }

    /// <summary>Id of what uses it.</summary>
    public string ById => Station?.Id ?? Point!.Id;

    /// <summary>The circuit that it hangs on, as written; empty when not said.</summary>
    public string Circuit => Station?.Circuit ?? (Point as CircuitPoint)?.Circuit ?? "";
}
