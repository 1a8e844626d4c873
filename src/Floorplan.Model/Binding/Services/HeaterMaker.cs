using Floorplan.Language.Syntax.Statements.Services;
using Floorplan.Model.Services;

namespace Floorplan.Model.Binding.Services;

internal sealed class HeaterMaker : ServiceMaker<HeaterStatement>
{
    protected override ServicePoint Point(HeaterStatement s, string id) => new Heater
    {
        Id = id,
        Circuit = s.Circuit?.Text ?? "",
        Phases = s.Phases?.Value,
        Form = s.Form?.Value,
        Ratings = [.. s.Ratings.Select(r => r.Value)],
    };
}
