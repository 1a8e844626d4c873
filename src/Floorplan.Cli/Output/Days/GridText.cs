using System.Globalization;
using System.Text.Json;
using Floorplan.Cli.Output.Json;
using Floorplan.Cli.Output.Printing;
using Floorplan.Sizing.Simulation.Gains;
using Floorplan.Sizing.Simulation.Plans;

namespace Floorplan.Cli.Output.Days;

/// <summary>What <c>day --vary</c> prints.</summary>
internal static class GridText
{
    public static void Write(Page page, PlannedDay day, IReadOnlyList<VariedFigure> figures, IReadOnlyList<GridRun> runs)
    {
        double target = day.Planned.TargetPerHour;
        var table = new TextColumns([.. figures.Select(f => f.Name), day.Planned.Unit + "/h", "makes the target"]);
        foreach (var run in runs)
        {
            table.Add(
            [
                .. run.Values.Select(v => v.ToString(CultureInfo.InvariantCulture)), Rate(run),
                run.Rate >= PlannedDay.Enough * target ? "yes" : "no",
            ]);
        }

        table.Print(page);
        var enough = runs.Where(r => r.Rate >= PlannedDay.Enough * target).MinBy(r => r.Values.Sum());
        page.Line(enough is null
            ? "None of them makes the target."
            : $"The least that makes the target: {string.Join(", ", figures.Zip(enough.Values, (f, v) => $"{f.Name} {v}"))}.");
    }

    public static void Csv(TextWriter output, PlannedDay day, IReadOnlyList<VariedFigure> figures, IReadOnlyList<GridRun> runs)
    {
        output.WriteLine(string.Join(',', figures.Select(f => f.Name).Append("items an hour").Append("target")));
        foreach (var run in runs)
        {
            output.WriteLine(string.Join(
                ',',
                run.Values.Select(v => v.ToString(CultureInfo.InvariantCulture))
                    .Append(run.Rate.ToString("0.###", CultureInfo.InvariantCulture))
                    .Append(day.Planned.TargetPerHour.ToString("0.###", CultureInfo.InvariantCulture))));
        }
    }

    public static void Json(TextWriter output, PlannedDay day, IReadOnlyList<VariedFigure> figures, IReadOnlyList<GridRun> runs)
        => JsonDocumentText.Write(output, json =>
    {
        json.WriteNumber("schema", 1);
        json.WriteString("unit", day.Planned.Unit);
        json.WriteNumber("targetPerHour", day.Planned.TargetPerHour);
        json.WriteStartArray("runs");
        foreach (var run in runs)
        {
            Write(json, figures, run);
        }

        json.WriteEndArray();
    });

    private static void Write(Utf8JsonWriter json, IReadOnlyList<VariedFigure> figures, GridRun run)
    {
        json.WriteStartObject();
        foreach (var (figure, value) in figures.Zip(run.Values))
        {
            json.WriteNumber(figure.Name, value);
        }

        json.WriteNumber("ratePerHour", Math.Round(run.Rate, 3));
        json.WriteEndObject();
    }

    private static string Rate(GridRun run) => run.Rate.ToString(run.Rate < 10 ? "0.##" : "0.#", CultureInfo.InvariantCulture);
}
