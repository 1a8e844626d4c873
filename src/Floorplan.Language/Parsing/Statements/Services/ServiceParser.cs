using Floorplan.Language.Details;
using Floorplan.Language.Details.Services;
using Floorplan.Language.Syntax.Statements.Services;
using Floorplan.Language.Syntax.Values;

namespace Floorplan.Language.Parsing.Statements.Services;

/// <summary>The shape that all service points share: name, label, words of the kind and the room, then details.</summary>
internal sealed class ServiceParser<T> : StatementParser<T>
    where T : ServiceStatement
{
    private readonly Func<WordSyntax, T> make;
    private readonly Detail? headPlace;
    private readonly Detail[] terms;

    /// <param name="all">All that this kind may say after a word.</param>
    /// <param name="rating">What it is made for; null for kinds without ratings.</param>
    /// <param name="size">What a length, or a size, without a word says; null for kinds that have none.</param>
    /// <param name="headPlace">Says where it is instead of <c>in ROOM</c>; null for kinds that are in a room only.</param>
    public ServiceParser(
        Func<WordSyntax, T> make, IReadOnlyList<Detail> all, Detail? rating = null, Detail? size = null, Detail? headPlace = null)
        : base(all)
    {
        (this.make, this.headPlace) = (make, headPlace);
        Details = all;

        // Said by a word alone.
        terms = [.. all.Where(d => d.RunsOn)];
        Bare =
        [
            .. all.Contains(ServiceDetails.Place)
                ? [new(ServiceDetails.Wall, Forms.WallStandsHere, Forms.Wall), Forms.Place(ServiceDetails.Place) with { MayStart = null }]
                : Array.Empty<BareForm>(),
            .. size is null
                ? Array.Empty<BareForm>()
                : [new(size, c => c.AtNumber && !c.PhraseHolds("from") && (rating is null || !Ratings.StandHere(c)), size.Read)],
            .. rating is null ? Array.Empty<BareForm>() : [new(rating, Ratings.StandHere, rating.Read) { MayStart = c => c.AtNumber }],
        ];
    }

    public override IReadOnlyList<Detail> Details { get; }

    public override IReadOnlyList<BareForm> Bare { get; }

    protected override T Make(WordSyntax keyword) => make(keyword);

    protected override void Head(T s, Cursor c)
    {
        s.Name = c.Name($"the {s.Keyword.Text}'s name");
        s.Label = c.TryText();
        while (!c.Failed && !c.AtPhraseEnd)
        {
            if (TryInHead(s, c, ServiceDetails.Room) || (headPlace is not null && TryInHead(s, c, headPlace)))
            {
                return;
            }

            if (!TryTerm(s, c))
            {
                Wrong(s, c);
            }
        }
    }

    private bool TryTerm(T s, Cursor c)
    {
        if (terms.FirstOrDefault(d => d.Forms.Any(f => c.IsWord(f))) is not { } term)
        {
            return false;
        }

        var start = c.Here;
        string word = c.Current.ToLowerInvariant();
        c.Skip();
        Keep(s, c, term, word, start, term.Read(c));
        return true;
    }

    private void Wrong(T s, Cursor c)
    {
        if (terms.Length == 0)
        {
            c.Wrong("`in` and a room");
        }
        else
        {
            c.Word($"a word of a {s.Keyword.Text}", [.. terms.SelectMany(t => t.Forms)]);
        }
    }
}
