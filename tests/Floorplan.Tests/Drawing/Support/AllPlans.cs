using Floorplan.Benchmarks;
using Floorplan.Checks.Framework;
using Floorplan.Cli.Gallery;
using Floorplan.Drawing.Frames;
using Floorplan.Tests.Architecture;
using Floorplan.Tests.Checks.Support;

namespace Floorplan.Tests.Drawing.Support;

/// <summary>The plans that a set of sheets is measured on, each by a name that a failing test prints.</summary>
internal static class AllPlans
{
    /// <summary>Every plan takes a second or so; the quick suite takes every so many.</summary>
    private const int GalleryStep = 24;
    private const int InventedStep = 67;

    private const string On = " on ";

    /// <summary>The papers that offices print, and one of a plotter.</summary>
    private static readonly string[] Papers = ["A4", "letter", "A3", "11 x 17 in", "A1"];
    private static readonly int OthersOfUnits = Papers.Length - 1;

    /// <summary>As they are shipped, and the metric ones in feet too.</summary>
    public static IEnumerable<string> Templates => DrawnPlans.Templates.SelectMany(t => new[] { t, t + " in feet" }).Where(Differs);

    /// <summary>The bad and the good example of every rule, and the classic mistakes before they are mended.</summary>
    public static IEnumerable<string> Gallery => Thoroughness.Slice(
        RuleCatalogue.All.SelectMany(r => new[] { $"bad {r.Name}", $"good {r.Name}" })
            .Concat(ClassicMistakes.All.Select(m => $"before {m.Name}")),
        GalleryStep);

    public static IEnumerable<string> Invented
        => Thoroughness.Slice(Enumerable.Range(0, InventedPlans.Count), InventedStep)
            .SelectMany(n => new[] { $"invented {n}", $"invented {n} in feet" }).Where(Differs);

    public static IEnumerable<string> All => [.. Templates, .. Gallery, .. Invented];

    /// <summary>
    /// The same on paper that is not the usual one of their units: the templates on all of it, one in four of the other plans on one, by
    /// turns. A name is such as <c>fish-20ft in feet on A4</c>.
    /// </summary>
    public static IEnumerable<string> OnOtherPaper =>
    [
        .. Templates.SelectMany(t => OtherPapers(t)),
        .. Gallery.Concat(Invented).Where((_, i) => i % OneIn == 0).Select((p, i) => OtherPapers(p)[i % OthersOfUnits]),
    ];

    /// <summary>All of them took ten minutes.</summary>
    private const int OneIn = 4;

    public static string Text(string name)
    {
        if (name.LastIndexOf(On, StringComparison.Ordinal) is > 0 and var on && Papers.Contains(name[(on + On.Length)..]))
        {
            return $"{Text(name[..on])}\nsheet all\n  paper {name[(on + On.Length)..]}\n";
        }

        const string feet = " in feet";
        if (name.EndsWith(feet, StringComparison.Ordinal))
        {
            return InFeet.Of(Text(name[..^feet.Length]));
        }

        string[] words = name.Split(' ', 2);
        return words[0] switch
        {
            "bad" => RuleCatalogue.Find(words[1])!.Bad,
            "good" => RuleCatalogue.Find(words[1])!.Good,
            "before" => Spoilt(ClassicMistakes.All.Single(m => m.Name == words[1])),
            "invented" => InventedPlans.Make(int.Parse(words[1])),
            _ => DrawnPlans.Text(name),
        };
    }

    /// <summary>The usual paper of the plan's units is left out.</summary>
    private static string[] OtherPapers(string plan)
        => [.. Papers.Where(p => p != PaperSize.Usual(CheckedPlan.Plan(Text(plan)).Units).Name).Select(p => plan + On + p)];

    private static string Spoilt(Mistake mistake) => mistake.Spoil(DrawnPlans.Text(mistake.Template));

    private static bool Differs(string name) => !name.EndsWith(" in feet", StringComparison.Ordinal) || Text(name) != Text(name[..^8]);
}
