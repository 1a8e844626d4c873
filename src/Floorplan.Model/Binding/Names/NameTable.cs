using Floorplan.Language.Diagnostics;
using Floorplan.Language.Text;
using Floorplan.Model.Binding.Drafts;

namespace Floorplan.Model.Binding.Names;

/// <summary>All names of one plan. Each is given once; <c>outside</c> belongs to the language.</summary>
internal sealed class NameTable(Reports reports)
{
    public const string Outside = "outside";

    private readonly Dictionary<string, NamedThing> names = new(StringComparer.Ordinal);

    public IEnumerable<NamedThing> All => names.Values;

    public NamedThing? Find(string id) => names.GetValueOrDefault(id);

    /// <summary>Null, with a report, when the name is taken.</summary>
    public NamedThing? Add(string id, string what, SourceSpan span)
    {
        if (id == Outside)
        {
            reports.Error(
                "name-reserved", "`outside` means everything beyond the shell, so nothing else can be called that", span,
                "choose another name");
            return null;
        }

        if (names.TryGetValue(id, out var before))
        {
            reports.Error(
                "name-taken",
                $"the name `{id}` is given twice, to a {before.What} and to a {what}",
                span,
                "give one of them another name",
                new RelatedSpan(before.Span, "first given here"));
            return null;
        }

        var named = new NamedThing(id, what, span);
        names[id] = named;
        return named;
    }

    /// <summary>Of things that share a name only the first is kept.</summary>
    public IEnumerable<T> Kept<T>(IEnumerable<T> drafts, Func<T, string> id, Func<T, SourceSpan> span) =>
        drafts.Where(d => Find(id(d)) is { } named && named.Span == span(d));

    /// <summary>The id when it is the name of such a thing; else null, with a report.</summary>
    /// <param name="what">As in <see cref="NamedThing.What"/>.</param>
    public string? Known(NameRef name, string what)
    {
        if (Find(name.Id)?.What == what)
        {
            return name.Id;
        }

        ReportUnknown(name.Id, what, name.Span, n => n.What == what);
        return null;
    }

    /// <summary>Reports a name that nothing has, with near ones among those that would fit.</summary>
    public void ReportUnknown(string id, string wanted, SourceSpan span, Func<NamedThing, bool> fits)
    {
        string? help = reports.Near(id, names.Values.Where(fits).Select(n => n.Id));
        if (names.TryGetValue(id, out var other))
        {
            reports.Error(
                "wrong-kind-of-name", $"`{id}` is a {other.What}, not a {wanted}", span, help, new RelatedSpan(other.Span, "given here"));
            return;
        }

        reports.Error("unknown-name", $"there is no {wanted} called `{id}`", span, help
            ?? $"check the spelling, or add a {wanted} of that name");
    }
}
