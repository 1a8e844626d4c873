namespace Floorplan.Language.Diagnostics;

/// <summary>
/// Says that one thing that is told only follows from another, which is told too. Mistakes of the text and findings of rules declare it
/// alike; <see cref="ToldOnce"/> applies it.
/// </summary>
/// <param name="What">Code or rule of what follows and stays silent.</param>
/// <param name="IsCause">Which of all that is told can be what it follows from.</param>
/// <param name="CauseAt">What the cause is about, such as ids of things; compared with <paramref name="EffectAt"/>.</param>
/// <param name="EffectAt">What the effect is about; one of these is what the cause is about. The same word on both sides stands for the
/// whole plan.</param>
public sealed record FollowsFrom<T>(
    string What, Func<T, bool> IsCause, Func<T, IEnumerable<string>> CauseAt, Func<T, IEnumerable<string>> EffectAt)
{
    /// <summary>What else must hold between the effect, first, and the cause; null for nothing.</summary>
    public Func<T, T, bool>? When { get; init; }
}
