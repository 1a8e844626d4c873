using System.Text.RegularExpressions;
using Floorplan.Tests.Architecture;

namespace Floorplan.Tests.Checks.Corpus;

/// <summary>One plan of the corpus: a sound one, or one with a slip; its text, and what must and must not be said of it.</summary>
internal sealed record CorpusPlan(string Name, string Text, IReadOnlyList<Saying> Must, IReadOnlyList<Saying> MustNot)
{
    private static readonly string Folder = Path.Combine("tests", "Floorplan.Tests", "Checks", "Corpus");

    /// <summary>The plans of the folder `sound`, as they stand.</summary>
    public static IReadOnlyList<CorpusPlan> Bases { get; } =
    [
        .. Directory.GetFiles(Repository.At(Path.Combine(Folder, "sound")), "*.unit").Order(StringComparer.Ordinal)
            .Select(p => new CorpusPlan(Path.GetFileNameWithoutExtension(p), Read(p), [], [])),
    ];

    /// <summary>All plans of which no error and no warning may be told.</summary>
    public static IReadOnlyList<CorpusPlan> Sound { get; } = [.. Bases, .. Changed("variants.txt")];

    /// <summary>All plans with one slip.</summary>
    public static IReadOnlyList<CorpusPlan> Faulty { get; } = Changed("slips.txt");

    public static string PathOf(string file) => Repository.At(Path.Combine(Folder, file));

    private static string Read(string path) => File.ReadAllText(path).ReplaceLineEndings("\n");

    private static List<CorpusPlan> Changed(string file)
    {
        var plans = new List<CorpusPlan>();
        var lines = Read(PathOf(file)).Split('\n').Where(l => l.Length > 0 && l[0] != '#').ToList();
        for (int i = 0; i < lines.Count;)
        {
            var head = Regex.Match(lines[i], @"^\[(\S+)\] on (\S+): .+$");
            if (!head.Success)
            {
                throw new InvalidDataException($"{file}: `{lines[i]}` is not a head such as [name] on plan: the slip in words");
            }

            var own = lines.Skip(++i).TakeWhile(l => l[0] != '[').ToList();
            i += own.Count;
            string text = Bases.Single(b => b.Name == head.Groups[2].Value).Text;
            foreach (string change in own.Where(l => !Saying.IsOne(l)))
            {
                text = TextChange.Apply(head.Groups[1].Value, text, change);
            }

            plans.Add(new CorpusPlan(head.Groups[1].Value, text, Saying.Of(own, "must "), Saying.Of(own, "not ")));
        }

        return plans;
    }
}
