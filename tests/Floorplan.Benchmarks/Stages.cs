using System.Globalization;
using Floorplan.Checks.Framework;
using Floorplan.Drawing.Scene;
using Floorplan.Drawing.Sheets;
using Floorplan.Language.Syntax;
using Floorplan.Model;
using Floorplan.Model.Space;

namespace Floorplan.Benchmarks;

/// <summary>
/// Where the time of one plan goes: each stage, each rule and each sheet, in a warm process. What several rules share, such
/// as the mesh of a room, is charged to the first that asks for it, as in the program.
/// </summary>
internal static class Stages
{
    /// <summary>Processor time spent on warming up, and then on measuring, in ms; a round that has begun is finished.</summary>
    private const double WarmUp = 6000;
    private const double Budget = 6000;

    /// <param name="text">The plan.</param>
    /// <param name="least">Rules below this many percent of the whole are added up to one row.</param>
    public static void Run(string text, double least)
    {
        double start = CpuClock.Now;
        do
        {
            Once(text);
        }
        while (CpuClock.Now - start < WarmUp);

        var rounds = new List<List<(string Name, double Ms)>>();
        start = CpuClock.Now;
        do
        {
            rounds.Add(Once(text));
        }
        while (CpuClock.Now - start < Budget);

        var rows = rounds[0].Select((r, i) => (r.Name, Ms: Median(rounds.Select(round => round[i].Ms)))).ToList();
        double parse = rows[0].Ms, all = rows.Sum(r => r.Ms);
        Console.WriteLine("| stage | ms | share | in parses of the text |");
        Console.WriteLine("|---|---:|---:|---:|");
        foreach (var (name, ms) in rows.Where(r => r.Ms >= least * all / 100 || !r.Name.StartsWith("rule", StringComparison.Ordinal)))
        {
            Print(name, ms);
        }

        Print("other rules", rows.Where(r => r.Ms < least * all / 100 && r.Name.StartsWith("rule", StringComparison.Ordinal)).Sum(r => r.Ms));
        Print("all rules", rows.Where(r => r.Name.StartsWith("rule", StringComparison.Ordinal)).Sum(r => r.Ms));
        Print("all", all);
        Print("all, fastest round", rounds.Min(round => round.Sum(r => r.Ms)));

        void Print(string name, double ms) =>
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"| {name} | {ms:0.00} | {100 * ms / all:0.0} % | {ms / parse:0.0} |"));
    }

    public static double Median(IEnumerable<double> values)
    {
        double[] sorted = [.. values.Order()];
        return sorted[sorted.Length / 2];
    }

    private static List<(string Name, double Ms)> Once(string text)
    {
        GC.Collect();
        var marks = new List<(string Name, double Ms)>();
        double last = CpuClock.Now;
        T Mark<T>(string name, T value)
        {
            double now = CpuClock.Now;
            marks.Add((name, now - last));
            last = CpuClock.Now;
            return value;
        }

        SyntaxTree tree = Mark("parse", Pipeline.Parse(text));
        Plan plan = Mark("bind", Pipeline.Bind(tree));
        var space = new FloorSpace(plan);
        Mark("space: routes of legs", space.LegRoutes);
        Mark("space: meetings", space.Meetings);
        var found = new List<Finding>();
        foreach (var rule in RuleCatalogue.All)
        {
            found.AddRange(Mark("rule " + rule.Name, Checker.Check(plan, space, [rule])));
        }

        var sheets = new List<SheetScene>();
        foreach (var sheet in SheetSet.All)
        {
            sheets.AddRange(Mark("sheet " + sheet.Number, SheetSet.Draw(new SheetRequest(plan, space, found), [sheet.Number])));
        }

        Mark("write SVG", Pipeline.Write(sheets));
        return marks;
    }
}
