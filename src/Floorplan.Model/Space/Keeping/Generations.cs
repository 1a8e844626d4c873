using System.Diagnostics.CodeAnalysis;

namespace Floorplan.Model.Space.Keeping;

/// <summary>
/// Results by what they were made from, of this plan and of the one before it. What neither asked for is forgotten, so that a day of edits
/// takes no more memory than two plans.
/// </summary>
internal sealed class Generations<TKey, TValue>
    where TKey : notnull
{
    private Dictionary<TKey, TValue> now = [];
    private Dictionary<TKey, TValue> before = [];

    /// <summary>Begins the next plan.</summary>
    public void Next() => (before, now) = (now, []);

    public bool TryGet(TKey key, [MaybeNullWhen(false)] out TValue value)
    {
        if (now.TryGetValue(key, out value))
        {
            return true;
        }

        if (!before.TryGetValue(key, out value))
        {
            return false;
        }

        now[key] = value;
        return true;
    }

    /// <summary>The kept result, or what <paramref name="make"/> gives.</summary>
    public TValue Of(TKey key, Func<TValue> make)
    {
        if (!TryGet(key, out var value))
        {
            Put(key, value = make());
        }

        return value;
    }

    public void Put(TKey key, TValue value) => now[key] = value;
}
