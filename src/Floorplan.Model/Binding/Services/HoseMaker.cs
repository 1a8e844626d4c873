using Floorplan.Language.Syntax.Statements.Services;
using Floorplan.Model.Binding.Drafts;
using Floorplan.Model.Services;

namespace Floorplan.Model.Binding.Services;

internal sealed class HoseMaker : ServiceMaker<HoseStatement>
{
    protected override ServicePoint Point(HoseStatement s, string id) => new Hose
    {
        Id = id,
        Length = s.Length?.Value,
        OnId = s.On?.Text,
        Guards = [.. s.Guards.Select(g => g.Value)],
        Ratings = [.. s.Ratings.Select(r => r.Value)],
    };

    protected override ServiceDraft Draft(HoseStatement s, ServiceDraft draft) => draft with { On = Ref(s.On) };
}
