using Floorplan.Language.Parsing;

namespace Floorplan.Language.Details;

/// <summary>The details of one statement by the words that they start with.</summary>
internal sealed class DetailWords
{
    private readonly Dictionary<string, List<Form>> byFirst = new(StringComparer.Ordinal);

    public DetailWords(IReadOnlyList<Detail> details)
    {
        Details = details;
        foreach (var detail in details)
        {
            foreach (string form in detail.Forms)
            {
                string[] words = form.Split(' ');
                if (!byFirst.TryGetValue(words[0], out var forms))
                {
                    byFirst[words[0]] = forms = [];
                }

                forms.Add(new Form(detail, words));
                forms.Sort((a, b) => b.Words.Length.CompareTo(a.Words.Length));
            }
        }
    }

    public IReadOnlyList<Detail> Details { get; }

    /// <summary>The first words, which a line of this statement may start with.</summary>
    public IReadOnlyCollection<string> First => byFirst.Keys;

    public bool Has(string first) => byFirst.ContainsKey(first);

    /// <summary>Whether all words of some detail stand here.</summary>
    public bool StartAt(Cursor c) => byFirst.TryGetValue(c.Current.ToLowerInvariant(), out var forms) && forms.Exists(f => f.StandsAt(c));

    /// <summary>The detail that stands here: the one with the most words that do, else the one whose first word does.</summary>
    public Form? FormAt(
        Cursor c,
        string first) => !byFirst.TryGetValue(first, out var forms) ? null : forms.Find(f => f.StandsAt(c)) ?? forms[^1];

    /// <param name="Words">All words of the form, in small letters.</param>
    internal sealed record Form(Detail Detail, string[] Words)
    {
        public bool StandsAt(Cursor c)
        {
            for (int i = 0; i < Words.Length; i++)
            {
                if (!c.IsWord(Words[i], i))
                {
                    return false;
                }
            }

            return true;
        }

        /// <summary>Takes its words, the first whatever it is; false, with the mistake told, when one is missing.</summary>
        public bool Take(Cursor c)
        {
            c.Skip();
            for (int i = 1; i < Words.Length; i++)
            {
                if (!c.Expect(Words[i]))
                {
                    return false;
                }
            }

            return true;
        }
    }
}
