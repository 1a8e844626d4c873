using Floorplan.Language.Syntax.Statements.Services;
using Floorplan.Model.Services;

namespace Floorplan.Model.Binding.Services;

internal sealed class OutletMaker : ServiceMaker<OutletStatement>
{
    protected override ServicePoint Point(OutletStatement s, string id) => new Outlet
    {
        Id = id,
        Circuit = s.Circuit?.Text ?? "",
        Phases = s.Phases?.Value,
        Guard = s.Guard?.Value,
        Sealed = s.Sealed is not null,
        Ratings = [.. s.Ratings.Select(r => r.Value)],
    };
}
