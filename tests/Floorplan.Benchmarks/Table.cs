using System.Globalization;

namespace Floorplan.Benchmarks;

/// <summary>A Markdown table, as README.md beside this file holds it; the first column is text, the others are numbers.</summary>
internal sealed class Table(params string[] heads)
{
    private readonly List<string[]> rows = [];

    public void Add(params string[] cells) => rows.Add(cells);

    public void Print()
    {
        Print(heads);
        Console.WriteLine("|---|" + string.Concat(Enumerable.Repeat("---:|", heads.Length - 1)));
        rows.ForEach(Print);
        Console.WriteLine();
    }

    /// <summary>Three figures or so: 0.04, 1.25, 83.1, 835.</summary>
    public static string Text(double value)
        => value.ToString(value < 10 ? "0.00" : value < 100 ? "0.0" : "0", CultureInfo.InvariantCulture);

    private static void Print(string[] cells) => Console.WriteLine("| " + string.Join(" | ", cells) + " |");
}
