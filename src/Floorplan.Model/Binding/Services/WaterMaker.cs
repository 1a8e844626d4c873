using Floorplan.Language.Syntax.Statements.Services;
using Floorplan.Model.Services;

namespace Floorplan.Model.Binding.Services;

internal sealed class WaterMaker : ServiceMaker<WaterStatement>
{
    protected override ServicePoint Point(WaterStatement s, string id) => new WaterPoint
    {
        Id = id,
        Cold = s.Cold is not null,
        Hot = s.Hot is not null,
        Size = s.Size?.Value,
        Guards = [.. s.Guards.Select(g => g.Value)],
        Ratings = [.. s.Ratings.Select(r => r.Value)],
    };
}
