using Floorplan.Language.Quantities;
using Floorplan.Model.Shapes;

namespace Floorplan.Model.Comparing;

/// <summary>What differs between two revisions of a plan. Things are the same when their kind and id are.</summary>
public sealed record PlanComparison(IReadOnlyList<PlanChange> Changes)
{
    /// <summary>In the order of the new plan, then what vanished in the order of the old one. Lengths are told in the units of the new plan.</summary>
    public static PlanComparison Of(Plan was, Plan now)
    {
        var before = ComparedThing.AllOf(was, now.Units).ToDictionary(t => t.Key);
        var after = ComparedThing.AllOf(now, now.Units);
        var changes = new List<PlanChange>();
        foreach (var thing in after)
        {
            if (!before.Remove(thing.Key, out var old))
            {
                changes.Add(new PlanChange(ChangeKind.Appeared, thing.Kind, thing.Id, thing.Label, thing.Facts.Select(f => $"{f.What} {f.Value}"), null, thing.Place));
            }
            else if (Words(old, thing, now.Units) is { Count: > 0 } words)
            {
                var kind = old.Place is { } a && thing.Place is { } b && a != b ? ChangeKind.Moved : ChangeKind.Changed;
                changes.Add(new PlanChange(kind, thing.Kind, thing.Id, thing.Label, words, old.Place, thing.Place));
            }
        }

        changes.AddRange(before.Values.Select(old => new PlanChange(ChangeKind.Vanished, old.Kind, old.Id, old.Label, [], old.Place, null)));
        return new PlanComparison(changes);
    }

    private static List<string> Words(ComparedThing was, ComparedThing now, UnitSystem units)
    {
        var words = new List<string>();
        if (was.Place is { } a && now.Place is { } b && Move(a, b, units) is { } move)
        {
            words.Add(move);
        }

        var old = was.Facts.ToDictionary(f => f.What, f => f.Value);
        foreach (var (what, value) in now.Facts)
        {
            string? before = old.GetValueOrDefault(what);
            old.Remove(what);
            if (before != value)
            {
                words.Add(before is null ? $"{what} {value}, not said before" : $"{what} {value}, was {before}");
            }
        }

        words.AddRange(old.Select(f => $"{f.Key} no longer said, was {f.Value}"));
        if (was.Label != now.Label)
        {
            words.Add($"called \"{now.Label}\", was \"{was.Label}\"");
        }

        return words;
    }

    /// <summary>How far the south-west corner, or the only edge that moved, went; null when neither corner did.</summary>
    private static string? Move(Box was, Box now, UnitSystem units)
    {
        var steps = new[] { Step(was.West, was.East, now.West, now.East, "east", "west", units), Step(was.South, was.North, now.South, now.North, "north", "south", units) };
        string moved = string.Join(" and ", steps.Where(s => s is not null));
        return moved.Length == 0 ? null : "moved " + moved;
    }

    private static string? Step(Length lowWas, Length highWas, Length lowNow, Length highNow, string up, string down, UnitSystem units)
    {
        var low = lowNow - lowWas;
        var high = highNow - highWas;

        // A thing that grew at one end has not moved; its size says so.
        var step = low == high ? low : Length.Zero;
        return step == Length.Zero ? null : $"{LengthText.Sentence(Length.Abs(step), units)} {(step > Length.Zero ? up : down)}";
    }
}

/// <summary>One thing that differs.</summary>
/// <param name="Thing">The kind in words: <c>station</c>, <c>door</c>.</param>
/// <param name="Words">What is different, each a clause with numbers; empty for what vanished.</param>
/// <param name="Was">Where it was on plan; null for what appeared and what has no place.</param>
/// <param name="Is">Where it is on plan; null for what vanished and what has no place.</param>
public sealed record PlanChange(ChangeKind Kind, string Thing, string Id, string Label, IEnumerable<string> Words, Box? Was, Box? Is)
{
    /// <summary><c>door d1</c>, <c>station Chill tank (chill)</c>.</summary>
    public string Name => Label.Length == 0 || Label == Id ? $"{Thing} {Id}".TrimEnd() : $"{Thing} {Label} ({Id})";

    /// <summary>One sentence without full stop.</summary>
    public string Text => Kind switch
    {
        ChangeKind.Appeared => $"{Name} is new{(Words.Any() ? ": " + string.Join(", ", Words) : "")}",
        ChangeKind.Vanished => $"{Name} is gone",
        _ => $"{Name}: {string.Join("; ", Words)}",
    };
}

public enum ChangeKind
{
    Appeared,
    Vanished,
    Moved,
    Changed,
}
