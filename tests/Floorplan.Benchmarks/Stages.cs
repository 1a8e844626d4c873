using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Drawing.Scene;
using Floorplan.Drawing.Sheets;
using Floorplan.Language.Syntax;
using Floorplan.Model;
using Floorplan.Model.Space;
using Floorplan.Sizing;

namespace Floorplan.Benchmarks;

/// <summary>
/// Where the time of one plan goes: each stage, each rule and each sheet. What several rules share, such as the mesh of a
/// room, is charged to the first that asks for it, as in the program.
/// </summary>
internal static class Stages
{
    /// <summary>Rules below this part of the whole are added up to one row.</summary>
    private const double Least = 0.005;

    /// <summary>Prints the table of one plan in a warm process: the median of the rounds.</summary>
    /// <param name="budget">Processor time to spend on warming up, and again on measuring, in ms; a round that has begun is
    /// finished.</param>
    public static void Run(string text, double budget)
    {
        Rounds(text, budget);
        var rounds = Rounds(text, budget);
        var rows = rounds[0].Select((r, i) => (r.Name, Ms: Median([.. rounds.Select(round => round[i].Ms)]))).ToList();
        double parse = rows[0].Ms, all = Median([.. rounds.Select(round => round.Sum(r => r.Ms))]);
        var small = rows.Where(r => IsRule(r.Name) && r.Ms < Least * all).ToList();
        var table = new Table("stage", "ms", "share", "in parses of the text");
        rows.Except(small).ToList().ForEach(r => Add(r.Name, r.Ms));
        Add($"{small.Count} other rules", small.Sum(r => r.Ms));
        Add("all rules", rows.Where(r => IsRule(r.Name)).Sum(r => r.Ms));
        Add("all", all);
        Add("all, fastest round", rounds.Min(round => round.Sum(r => r.Ms)));
        table.Print();

        void Add(string name, double ms) => table.Add(name, Table.Text(ms), Table.Text(100 * ms / all) + " %", Table.Text(ms / parse));
    }

    public static bool IsRule(string stage) => stage.StartsWith("rule ", StringComparison.Ordinal);

    /// <summary>The stages of one run from text to SVG, in order.</summary>
    /// <param name="draw">Whether sheets are drawn too.</param>
    public static List<(string Name, double Ms)> Once(string text, bool draw = true)
    {
        GC.Collect();
        var marks = new List<(string Name, double Ms)>();
        double last = CpuClock.Now;
        T Mark<T>(string name, T value)
        {
            marks.Add((name, CpuClock.Now - last));
            last = CpuClock.Now;
            return value;
        }

        SyntaxTree tree = Mark("parse", Pipeline.Parse(text));
        Plan plan = Mark("bind", Pipeline.Bind(tree));
        var space = new FloorSpace(plan);
        var facts = new PlanFacts(plan, space);
        Mark("space: routes of legs", space.LegRoutes);
        Mark("space: meetings", space.Meetings);
        var found = new List<Finding>();
        foreach (var rule in RuleCatalogue.All)
        {
            found.AddRange(Mark("rule " + rule.Name, Checker.Check(facts, [rule])));
        }

        if (draw)
        {
            var sheets = new List<SheetScene>();
            foreach (var sheet in SheetSet.All)
            {
                sheets.AddRange(Mark($"sheet {sheet.Number}", SheetSet.Draw(new SheetRequest(facts, found), [sheet.Number])));
            }

            Mark("write SVG", Pipeline.Write(sheets));
        }

        return marks;
    }

    /// <summary>At least one round.</summary>
    private static List<List<(string Name, double Ms)>> Rounds(string text, double budget)
    {
        var rounds = new List<List<(string Name, double Ms)>>();
        double start = CpuClock.Now;
        do
        {
            rounds.Add(Once(text));
        }
        while (CpuClock.Now - start < budget);
        return rounds;
    }

    private static double Median(List<double> values)
    {
        values.Sort();
        return values[values.Count / 2];
    }
}
