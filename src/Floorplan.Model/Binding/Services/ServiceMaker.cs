using Floorplan.Language.Syntax.Statements;
using Floorplan.Language.Syntax.Statements.Services;
using Floorplan.Language.Syntax.Values;
using Floorplan.Model.Binding.Drafts;
using Floorplan.Model.Services;

namespace Floorplan.Model.Binding.Services;

/// <summary>
/// What all service points share: id, label, room, place, wall and height. The maker of one kind adds what that kind has.
/// </summary>
internal abstract class ServiceMaker<T> : IServiceMaker
    where T : ServiceStatement
{
    public Type Reads => typeof(T);

    public IEnumerable<ServiceDraft> Read(Statement statement)
    {
        if (statement is not T { Name: { } name } s)
        {
            yield break;
        }

        var point = Point(s, name.Text) with
        {
            Label = s.Label?.Text ?? "",
            Wall = s.Wall?.Side ?? s.Place.OfType<AgainstTerm>().FirstOrDefault()?.Wall.Side,
            Height = s.Height?.Value,
            Span = s.HeadSpan,
        };

        // `north wall` says the same as `against north wall`.
        IReadOnlyList<PlaceTerm> place = s.Wall is { } wall ? [new AgainstTerm(wall, wall.Span), .. s.Place] : s.Place;
        yield return Draft(s, new ServiceDraft(point, Ref(s.Room), place));
    }

    /// <summary>The point with what only this kind has.</summary>
    protected abstract ServicePoint Point(T s, string id);

    /// <summary>Adds the names of other things, and what the statement lacks.</summary>
    protected virtual ServiceDraft Draft(T s, ServiceDraft draft) => draft;

    protected static NameRef? Ref(NameSyntax? name) => name is null ? null : new NameRef(name.Text, name.Span);
}
