using Floorplan.Model.Details;
using Floorplan.Model.Shapes;

namespace Floorplan.Model.Comparing;

/// <summary>One thing that differs.</summary>
/// <param name="Thing">The kind in words: <c>station</c>, <c>door</c>.</param>
/// <param name="Moved">How far it went, in words; null when it did not move.</param>
/// <param name="Details">Which details differ; of a new thing all that it has, of one that is gone all that it had.</param>
/// <param name="Was">Where it was on plan; null for what is new and what has no place.</param>
/// <param name="Is">Where it is on plan; null for what is gone and what has no place.</param>
public sealed record PlanChange(
    ChangeKind Kind,
    string Thing,
    string Id,
    string Label,
    string? Moved,
    IReadOnlyList<DetailChange> Details,
    Box? Was,
    Box? Is)
{
    /// <summary><c>door d1</c>, <c>station Chill tank (chill)</c>.</summary>
    public string Name => Label.Length == 0 || Label == Id ? $"{Thing} {Id}".TrimEnd() : $"{Thing} {Label} ({Id})";

    /// <summary>One sentence without full stop.</summary>
    public string Text => Kind switch
    {
        ChangeKind.Appeared
            => $"{Name} is new{(Details.Count > 0 ? ": " + string.Join(", ", Details.Select(d => DetailChange.Said(d.Word, d.Is!))) : "")}",
        ChangeKind.Vanished => $"{Name} is gone",
        _ => $"{Name}: {string.Join("; ", (Moved is null ? [] : new[] { Moved }).Concat(Details.Select(d => d.Text)))}",
    };
}

/// <summary>One detail that differs.</summary>
/// <param name="Was">As printed; null when it was not said.</param>
/// <param name="Is">As printed; null when it is no longer said.</param>
public sealed record DetailChange(string Word, string? Was, string? Is)
{
    /// <summary><c>holds 80 fish, was 60 fish</c></summary>
    public string Text => (Was, Is) switch
    {
        (_, null) => Was == SaidThings.Yes ? $"{Word} no longer said" : $"{Word} no longer said, was {Was}",
        (null, { } now) => $"{Said(Word, now)}, not said before",
        ({ } was, { } now) => Word == Label ? $"called \"{now}\", was \"{was}\"" : $"{Said(Word, now)}, was {was}",
    };

    /// <summary>The word of a change of the label.</summary>
    internal const string Label = "label";

    /// <summary><c>holds 80 fish</c>, or the word alone for what is said by it alone.</summary>
    internal static string Said(string word, string value) => value == SaidThings.Yes ? word : $"{word} {value}";
}

public enum ChangeKind
{
    Appeared,
    Vanished,
    Moved,
    Changed,
}
