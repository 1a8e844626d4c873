using Floorplan.Language.Diagnostics.Pages;

namespace Floorplan.Model.Binding.Pages;

/// <summary>The owner's table of prices.</summary>
internal static class RatesPages
{
    private const string Named = "plan \"Unit\"\n  rates \"our rates.csv\"";

    private static readonly string Rooms = Setting.Rooms[(Setting.Rooms.IndexOf('\n', StringComparison.Ordinal) + 1)..];

    public static IReadOnlyList<DiagnosticPage> All { get; } =
    [
        new("rates-not-read",
            "The table of rates that the plan names cannot be read: it is not there, not below the plan's folder, too long, or no `.csv`.",
            "plan \"Unit\"\n  rates \"our rats.csv\"",
            Named)
        { Around = Rooms, Files = RatesFile("what, unit, low, high\nwater, m3, 2, 3\n") },
        new("rates-head",
            "A table of rates begins with the names of its columns: `what, unit, low, high`, or `what, unit, rate`.",
            Named + "\n# and it begins: water, m3, 2, 3",
            Named)
        {
            Around = Rooms,
            Files = RatesFile("water, m3, 2, 3\n"),
            FilesMended = RatesFile("what, unit, low, high\nwater, m3, 2, 3\n"),
        },
        new("rates-row",
            "A line of a table of rates is not `what, unit, low, high` with two amounts, the low one first. Decimals have a point.",
            Named + "\n# and in it: water, m3, dear, 3",
            Named)
        {
            Around = Rooms,
            Files = RatesFile("what, unit, low, high\nwater, m3, dear, 3\n"),
            FilesMended = RatesFile("what, unit, low, high\nwater, m3, 2, 3\n"),
        },
        new("rates-twice",
            "A table of rates says the rate of one thing in one unit twice.",
            Named + "\n# and in it: water, m3, 2 and water, m3, 3",
            Named)
        {
            Around = Rooms,
            Files = RatesFile("what, unit, rate\nwater, m3, 2\nwater, m3, 3\n"),
            FilesMended = RatesFile("what, unit, rate\nwater, m3, 2\n"),
        },
    ];

    private static Dictionary<string, string> RatesFile(string text) => new() { ["our rates.csv"] = text };
}
