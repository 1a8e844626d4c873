using Floorplan.Language.Syntax.Statements.Services;
using Floorplan.Model.Services;

namespace Floorplan.Model.Binding.Services;

internal sealed class SwitchMaker : ServiceMaker<SwitchStatement>
{
    protected override ServicePoint Point(SwitchStatement s, string id) => new Switch
    {
        Id = id,
        Circuit = s.Circuit?.Text ?? "",
        Switching = s.Switching?.Value,
        Sealed = s.Sealed is not null,
        Ratings = [.. s.Ratings.Select(r => r.Value)],
    };
}
