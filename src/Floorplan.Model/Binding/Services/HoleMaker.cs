using Floorplan.Language.Syntax.Statements.Services;
using Floorplan.Model.Binding.Drafts;
using Floorplan.Model.Services;

namespace Floorplan.Model.Binding.Services;

internal sealed class HoleMaker : ServiceMaker<HoleStatement>
{
    protected override ServicePoint Point(HoleStatement s, string id) => new Hole
    {
        Id = id,
        Through = s.Through?.Value,
        Size = s.Size?.Width.Value,
        SizeAcross = s.Size?.Depth?.Value,
    };

    protected override ServiceDraft Draft(HoleStatement s, ServiceDraft draft)
        => draft with { Lacks = reports => Complete((Hole)draft.Point, reports) };

    /// <summary>Whoever cuts a hole has to know through what, how high and how large.</summary>
    private static void Complete(Hole hole, Reports reports)
    {
        if (hole.Wall is null && hole.Through is null)
        {
            reports.Error(
                "hole-incomplete", $"`{hole.Id}` does not say what it goes through", hole.Span,
                "write the wall, `floor` or `roof`, such as `hole h1 roof in ROOM`");
        }
        else if (hole.Wall is not null && hole.Height is null)
        {
            reports.Error(
                "hole-incomplete", $"`{hole.Id}` is in a wall and does not say how high its middle is", hole.Span,
                "add `height` and a length above the finished floor");
        }
        else if (hole.Size is null)
        {
            reports.Error(
                "hole-incomplete", $"`{hole.Id}` does not say how large it is", hole.Span,
                $"add its diameter, such as `{reports.Example("50 mm", "2 in")}`, or two sides, such as "
                    + $"`{reports.Example("400 mm x 300 mm", "16 in x 12 in")}`");
        }
    }
}
