using Floorplan.Checks.Findings;
using Floorplan.Language.Diagnostics;
using Floorplan.Tests.Architecture;
using Floorplan.Tests.Checks.Support;
using Xunit;

namespace Floorplan.Tests.Checks.Corpus;

/// <summary>
/// Whether plans that builders might write get the findings that their harm asks for, and sound ones none. What is not yet so stands by
/// name in `known.txt`, so that nothing gets worse unseen; FLOORPLAN_APPROVE=corpus writes that file again.
/// </summary>
public class CorpusTests
{
    private static readonly Lazy<IReadOnlyList<string>> Known = new(
        () => [.. File.ReadAllLines(CorpusPlan.PathOf("known.txt")).Where(l => l.Length > 0 && l[0] != '#')]);

    private static readonly Lazy<Dictionary<string, IReadOnlyList<Finding>>> OfBase = new(
        () => CorpusPlan.Bases.ToDictionary(b => b.Name, Findings));

    private static readonly Lazy<IReadOnlyList<string>> Today = new(Score);

    [Fact]
    public void The_score_is_the_known_one()
    {
        if (Environment.GetEnvironmentVariable("FLOORPLAN_APPROVE") == "corpus")
        {
            string[] head = [.. File.ReadLines(CorpusPlan.PathOf("known.txt")).TakeWhile(l => l.StartsWith('#'))];
            File.WriteAllText(CorpusPlan.PathOf("known.txt"), string.Join('\n', [.. head, .. Today.Value]) + "\n");
            return;
        }

        Assert.Equal(Known.Value, Today.Value);
    }

    [Fact]
    public void The_corpus_is_large_enough_and_no_name_stands_twice()
    {
        var plans = CorpusPlan.Sound.Concat(CorpusPlan.Faulty).ToList();

        Assert.True(CorpusPlan.Sound.Count >= 40, $"{CorpusPlan.Sound.Count} sound plans");
        Assert.True(CorpusPlan.Faulty.Count >= 150, $"{CorpusPlan.Faulty.Count} plans with a slip");
        Assert.Equal(plans.Count, plans.Select(p => p.Name).Distinct().Count());
        Assert.Equal([], CorpusPlan.Faulty.Where(p => p.Must.Count + p.MustNot.Count == 0).Select(p => p.Name));
    }

    [Fact]
    public void What_developers_read_is_the_score()
    {
        int Of(string word) => Known.Value.Count(l => l.StartsWith(word + " ", StringComparison.Ordinal));
        int falseOnes = Known.Value.Where(l => l.StartsWith("false ", StringComparison.Ordinal)).Select(l => l.Split(' ')[1]).Distinct()
            .Count();
        int slips = CorpusPlan.Faulty.Count;

        Assert.Contains(
            $"| {slips} | {slips - Of("wrong") - Of("missed")} | {Of("wrong")} | {Of("missed")} | {CorpusPlan.Sound.Count} | {falseOnes} |",
            File.ReadAllText(Repository.At("DEVELOPERS.md")));
    }

    private static IReadOnlyList<string> Score()
        => [.. CorpusPlan.Sound.SelectMany(Falses).Concat(CorpusPlan.Faulty.SelectMany(Result)).Order(StringComparer.Ordinal)];

    private static IEnumerable<string> Falses(CorpusPlan plan) => Findings(plan)
        .Where(f => f.Severity != Severity.Note || plan.MustNot.Any(n => n.Fits(f)))
        .Select(f => $"false {plan.Name} {f.Rule} {string.Join(' ', f.Things)}".TrimEnd())
        .Distinct();

    private static IEnumerable<string> Result(CorpusPlan plan)
    {
        var sound = OfBase.Value[plan.Name.Split('-')[0]];
        var told = Findings(plan).Where(f => !sound.Any(s => s.Rule == f.Rule && s.Message == f.Message)).ToList();
        bool wrong = plan.MustNot.Any(n => told.Exists(n.Fits));
        var missing = plan.Must.Where(m => !told.Exists(m.Fits)).ToList();
        if (wrong || missing.Exists(m => told.Exists(m.Names)))
        {
            yield return $"wrong {plan.Name}";
        }
        else if (missing.Count > 0)
        {
            yield return $"missed {plan.Name}";
        }
    }

    // A text that does not read has no findings: its slip is then missed, and a sound plan of that kind is our mistake.
    private static IReadOnlyList<Finding> Findings(CorpusPlan plan)
    {
        var bound = CheckedPlan.Bind(plan.Text);
        return bound.Plan is { } read && !bound.Diagnostics.Any(d => d.Severity == Severity.Error)
            ? CheckedPlan.Check(read)
            : plan.Must.Count + plan.MustNot.Count > 0 && CorpusPlan.Faulty.Contains(plan)
                ? []
                : throw new InvalidDataException($"{plan.Name}: {bound.Diagnostics[0].Message}");
    }
}
