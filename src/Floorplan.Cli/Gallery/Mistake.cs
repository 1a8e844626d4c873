namespace Floorplan.Cli.Gallery;

/// <summary>A classic mistake: a template that works, and the small change of text that spoils it.</summary>
/// <param name="Name">Names its folder.</param>
/// <param name="Template">The plan that works; it is the plan after mending.</param>
/// <param name="Rule">The rule that finds it.</param>
/// <param name="Sheet">The sheet that shows it best.</param>
/// <param name="Story">What somebody meant by it, in a sentence or two.</param>
/// <param name="Edits">What the spoilt plan says in place of a stretch of the template; each stretch occurs once.</param>
internal sealed record Mistake(
    string Name, string Title, string Template, string Rule, int Sheet, string Story, IReadOnlyList<(string Good, string Bad)> Edits)
{
    /// <summary>The template's text with the mistake made.</summary>
    /// <exception cref="InvalidOperationException">The template no longer has such a stretch, or has it twice.</exception>
    public string Spoil(string template)
    {
        foreach (var (good, bad) in Edits)
        {
            int at = template.IndexOf(good, StringComparison.Ordinal);
            if (at < 0 || template.IndexOf(good, at + 1, StringComparison.Ordinal) >= 0)
            {
                throw new InvalidOperationException($"mistake {Name}: template {Template} must hold this text once: {good}");
            }

            template = string.Concat(template.AsSpan(0, at), bad, template.AsSpan(at + good.Length));
        }

        return template;
    }
}
