using System.Text;
using Floorplan.Checks.Findings;
using Floorplan.Language.Diagnostics;
using Floorplan.Language.Text;
using Floorplan.Model;
using Floorplan.Model.Openings;
using Floorplan.Model.Rooms;
using Floorplan.Model.Stations;
using Floorplan.Sizing;
using Floorplan.Sizing.Working;

namespace Floorplan.Tests.Drawing.Live;

/// <summary>All that came of one text, in words, so that two runs can be held against each other.</summary>
internal static class AllThatCame
{
    public static string Of(IReadOnlyList<Diagnostic> diagnostics, IReadOnlyList<Finding> findings, PlanFacts? facts)
    {
        var all = new StringBuilder();
        foreach (var d in diagnostics)
        {
            all.Append($"{d.Severity} {d.Code} {Place(d.Span)} {d.Message} | {d.Help}");
            all.AppendJoin("", (d.Related ?? []).Select(r => $" | {r}")).Append('\n');
        }

        foreach (var f in findings)
        {
            all.Append($"{f.Severity} {f.Rule} {Mine(f.Span, facts!.Plan)} {string.Join(' ', f.Things)}: {f.Message} | {f.Limit}");
            all.Append($" | {f.Mend} | {f.NewLine} | {f.NewWords} | {f.At?.X:R} {f.At?.Y:R} {f.Measured:R} {f.LimitValue:R} {f.Misplaced}");
            all.Append($" | {(f.AcceptedBy is { } by ? Place(by.Span) : "")}");
            all.AppendJoin("", f.Figures.Select(Words)).Append('\n');
        }

        return facts is null ? all.ToString() : all + Facts(facts);
    }

    private static string Facts(PlanFacts facts)
    {
        var all = new StringBuilder();
        foreach (var leg in facts.Space.LegRoutes)
        {
            all.Append($"leg {Place(leg.Leg.Span)} {leg.Mover.Name} {leg.Blocked}");
            if (leg.Route is { } route)
            {
                all.AppendJoin("", route.Path.Coordinates.Select(c => $" {c.X:R},{c.Y:R}"));
                all.AppendJoin("", route.Rooms.Select(r => $" {r?.Id} {Is(r, facts.Plan)}"));
                all.AppendJoin("", route.Openings.Select(o => $" {o.Id} {Is(o, facts.Plan)}"));
            }

            all.Append('\n');
        }

        foreach (var step in facts.BringingIn.Steps)
        {
            all.Append($"in {step.Station.Id} {Is(step.Station, facts.Plan)} past");
            all.AppendJoin("", step.Ahead.Select(a => $" {a.Id} {Is(a, facts.Plan)}"));
            all.Append($" {step.Wall?.Id} {Is(step.Wall, facts.Plan)}\n");
        }

        foreach (var entry in facts.BringingIn.Entries)
        {
            all.Append($"entry {entry.Station.Id} {Is(entry.Station, facts.Plan)} {entry.GoesUpright} {entry.GoesTipped}");
            all.Append($" {entry.Decisive?.Id} {Is(entry.Decisive, facts.Plan)} {entry.LeftOpen?.Id}\n");
        }

        return all.ToString();
    }

    /// <summary>Where it is written: a thing of an older plan is written elsewhere.</summary>
    private static string Is(Room? room, Plan plan) => room is null ? "" : Mine(room.Span, plan);

    private static string Is(Opening? opening, Plan plan) => opening is null ? "" : Mine(opening.Span, plan);

    private static string Is(Station station, Plan plan) => Mine(station.Span, plan) + " " + station.Label;

    private static string Mine(SourceSpan span, Plan plan) =>
        span.Source is null || ReferenceEquals(span.Source, plan.Source) ? Place(span) : $"of another text: {Place(span)}";

    private static string Words(Figure figure) => $" | {figure} ({string.Join("; ", figure.Inputs.Select(
        i => $"{i.Name} {i.Text} {(i.Line is { } line ? Place(line) : "")} {i.Worked}"))})";

    private static string Place(SourceSpan span) => span.Source is null ? "nowhere" : $"{span.Source.Path} {span.Start}+{span.Length}";
}
