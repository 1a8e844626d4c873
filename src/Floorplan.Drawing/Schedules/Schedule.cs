using Floorplan.Drawing.Blocks;
using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Sheets.OpeningsAndFrames;
using Floorplan.Drawing.Sheets.Schedules;
using Floorplan.Language.Quantities;
using Floorplan.Model;
using Floorplan.Sizing;

namespace Floorplan.Drawing.Schedules;

/// <summary>A table of the plan for a spreadsheet: every row has a cell for every column.</summary>
/// <param name="Name">For the file's name: <c>stations</c>.</param>
/// <param name="Columns">Heads; those of lengths name their unit.</param>
/// <param name="Rows">Text, numbers, yes or no (as <c>bool</c>), null for nothing; or a <see cref="Cell"/>, with the figures that it
/// prints.</param>
public sealed record Schedule(string Name, string Title, IReadOnlyList<string> Columns, IReadOnlyList<IReadOnlyList<object?>> Rows)
{
    /// <summary>All schedules of a plan; one without rows is among them, so that the set is always the same.</summary>
    public static IReadOnlyList<Schedule> All(PlanFacts facts)
    {
        var plan = facts.Plan;
        var steel = Tape.ForSteel(plan.Units);
        return
        [
            StationSchedule.Of(facts),
            OpeningSchedule.Of(plan),
            ServiceSchedule.Of(plan),
            TableSchedule.Of("finishes", ScheduleTables.Finishes(facts)),
            TableSchedule.Of("connections", ScheduleTables.Connections(facts)),
            TableSchedule.Of("weights", ScheduleTables.Weights(facts) ?? new KeyTable("Weights", ["What", "Empty", "Full"], [])),
            TableSchedule.Of("cut-outs", CutOutTables.Steel(plan.Shell, facts.CutOuts, steel)),
            TableSchedule.Of("holes", CutOutTables.Services(plan.Shell, facts.Holes, steel)),
            TableSchedule.Of("frames", CutListTable.Of(facts.CutList, plan.Units)),
        ];
    }

    /// <summary>The worked-out values that its cells print.</summary>
    public IEnumerable<Sizing.Working.Figure> Figures => Rows.SelectMany(r => r).OfType<Cell>().SelectMany(c => c.Figures);

    /// <summary>The unit that lengths are in: <c>mm</c> or <c>in</c>.</summary>
    internal static string Unit(Plan plan) => QuantityText.LengthUnit(plan.Units);

    /// <summary>A length as a number that a spreadsheet can calculate with; null for none.</summary>
    internal static double? Number(Length? length, Plan plan) => length is not { } given ? null
        : plan.Units == UnitSystem.Metric ? Math.Round(given.Millimetres, 3) : Math.Round(given.Inches, 4);
}
