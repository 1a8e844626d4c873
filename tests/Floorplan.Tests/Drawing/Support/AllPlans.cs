using Floorplan.Benchmarks;
using Floorplan.Checks.Framework;
using Floorplan.Cli.Gallery;
using Floorplan.Tests.Architecture;
using Floorplan.Tests.Checks.Support;

namespace Floorplan.Tests.Drawing.Support;

/// <summary>The plans that a set of sheets is measured on, each by a name that a failing test prints.</summary>
internal static class AllPlans
{
    /// <summary>Every plan takes a second or so; the quick suite takes every so many.</summary>
    private const int GalleryStep = 24;
    private const int InventedStep = 67;

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

    public static string Text(string name)
    {
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

    private static string Spoilt(Mistake mistake) => mistake.Spoil(DrawnPlans.Text(mistake.Template));

    private static bool Differs(string name) => !name.EndsWith(" in feet", StringComparison.Ordinal) || Text(name) != Text(name[..^8]);
}
