using Floorplan.Language.Syntax.Statements.Services;
using Floorplan.Language.Words.Terms;
using Floorplan.Model.Binding.Drafts;
using Floorplan.Model.Services;

namespace Floorplan.Model.Binding.Services;

internal sealed class DrainMaker : ServiceMaker<DrainStatement>
{
    protected override ServicePoint Point(DrainStatement s, string id) => new Drain
    {
        Id = id,
        Form = s.Form?.Value ?? DrainForm.Floor,
        Size = s.Size?.Value,
        OutletBelow = s.OutletBelow?.Value,
        Ratings = [.. s.Ratings.Select(r => r.Value)],
    };

    protected override ServiceDraft Draft(DrainStatement s, ServiceDraft draft) => Ref(s.RunsTo) is { } next
        ? draft with { Join = (point, names) => (Drain)point with { RunsToId = names.Known(next, "drain") } }
        : draft;
}
