using Floorplan.Language.Quantities;
using Floorplan.Model.Details;
using Floorplan.Model.Shapes;

namespace Floorplan.Model.Comparing;

/// <summary>What differs between two revisions of a plan. Things are the same when their kind and id are.</summary>
public sealed record PlanComparison(IReadOnlyList<PlanChange> Changes)
{
    /// <summary>
    /// In the order of the new plan, then what is gone in the order of the old one. Lengths are told in the units of the new plan.
    /// </summary>
    public static PlanComparison Of(Plan was, Plan now)
    {
        var before = PlanThings.Of(was, now.Units).ToDictionary(t => t.Key);
        var changes = new List<PlanChange>();
        foreach (var thing in PlanThings.Of(now, now.Units))
        {
            if (!before.Remove(thing.Key, out var old))
            {
                changes.Add(
                    new PlanChange(
                        ChangeKind.Appeared, thing.Kind, thing.Id, thing.Label, null,
                        [.. Compared(thing).Select(d => new DetailChange(d.Word, null, d.Value))], null, thing.Place));
                continue;
            }

            string? moved = old.Place is { } a && thing.Place is { } b ? Move(a, b, now.Units) : null;
            var details = Differences(old, thing);
            if (moved is not null || details.Count > 0)
            {
                var kind = old.Place is { } from && thing.Place is { } to && from != to ? ChangeKind.Moved : ChangeKind.Changed;
                changes.Add(new PlanChange(kind, thing.Kind, thing.Id, thing.Label, moved, details, old.Place, thing.Place));
            }
        }

        changes.AddRange(before.Values.Select(old =>
            new PlanChange(
                ChangeKind.Vanished,
                old.Kind,
                old.Id,
                old.Label,
                null,
                [.. Compared(old).Select(d => new DetailChange(d.Word, d.Value, null))],
                old.Place,
                null)));
        return new PlanComparison(changes);
    }

    private static IEnumerable<ThingDetail> Compared(PlanThing thing) => thing.Details.Where(d => !d.ToldByBox);

    private static List<DetailChange> Differences(PlanThing was, PlanThing now)
    {
        var changes = new List<DetailChange>();
        var old = Compared(was).ToDictionary(d => d.Word, d => d.Value);
        foreach (var detail in Compared(now))
        {
            old.Remove(detail.Word, out string? before);
            if (before != detail.Value)
            {
                changes.Add(new DetailChange(detail.Word, before, detail.Value));
            }
        }

        changes.AddRange(old.Select(d => new DetailChange(d.Key, d.Value, null)));
        if (was.Label != now.Label)
        {
            changes.Add(new DetailChange(DetailChange.Label, was.Label, now.Label));
        }

        return changes;
    }

    /// <summary>How far the south-west corner, or the only edge that moved, went; null when neither corner did.</summary>
    private static string? Move(Box was, Box now, UnitSystem units)
    {
        var steps = new[]
        {
            Step(was.West, was.East, now.West, now.East, "east", "west", units),
            Step(was.South, was.North, now.South, now.North, "north", "south", units),
        };
        string moved = string.Join(" and ", steps.Where(s => s is not null));
        return moved.Length == 0 ? null : "moved " + moved;
    }

    private static string? Step(Length lowWas, Length highWas, Length lowNow, Length highNow, string up, string down, UnitSystem units)
    {
        var low = lowNow - lowWas;
        var high = highNow - highWas;

        // A thing that grew at one end has not moved; its size says so.
        var step = low == high ? low : Length.Zero;
        return step == Length.Zero ? null : $"{QuantityText.Length(Length.Abs(step), units)} {(step > Length.Zero ? up : down)}";
    }
}
