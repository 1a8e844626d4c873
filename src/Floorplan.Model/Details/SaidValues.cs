using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax.Statements;

namespace Floorplan.Model.Details;

/// <summary>What is said of one thing, by the rows of its table. Immutable once the plan is bound.</summary>
public sealed class SaidValues
{
    private readonly List<(object Row, object Value)> values = [];

    public static SaidValues None { get; } = new();

    /// <summary>Each row from the nearest statement that says it: a thing's own first, then those of its kinds.</summary>
    /// <param name="quarters">Quarter turns of the thing. Sides that a kind names turn with it; a thing's own are plan sides.</param>
    internal static SaidValues Fold<TStatement>(IReadOnlyList<SaidRow<TStatement>> table, IReadOnlyList<TStatement> chain, int quarters)
        where TStatement : Statement
    {
        var said = new SaidValues();
        foreach (var row in table)
        {
            for (int i = 0; i < chain.Count; i++)
            {
                if (row.ReadFrom(chain[i], i == 0 ? 0 : quarters) is { } value)
                {
                    said.values.Add((row, value));
                    break;
                }
            }
        }

        return said;
    }

    /// <summary>Null when it is not said.</summary>
    public TValue? Get<TStatement, TValue>(SaidRow<TStatement, TValue> row)
        where TStatement : Statement
        where TValue : class => Find(row) as TValue;

    /// <summary>Null when it is not said.</summary>
    public TValue? Figure<TStatement, TValue>(SaidRow<TStatement, TValue> row)
        where TStatement : Statement
        where TValue : struct => Find(row) is TValue value ? value : null;

    /// <summary>What is said of a row, in words; empty when nothing is.</summary>
    public string Print<TStatement>(SaidRow<TStatement> row, UnitSystem units)
        where TStatement : Statement => Find(row) is { } value ? row.PrintOf(value, units) : "";

    /// <summary>All that is said, in the order of the table.</summary>
    public IEnumerable<ThingDetail> PrintAll<TStatement>(IReadOnlyList<SaidRow<TStatement>> table, UnitSystem units)
        where TStatement : Statement
    {
        foreach (var row in table)
        {
            if (Find(row) is { } value)
            {
                yield return new ThingDetail(row.Word, row.PrintOf(value, units), row.ToldByBox);
            }
        }
    }

    private object? Find(object row)
    {
        foreach (var (key, value) in values)
        {
            if (ReferenceEquals(key, row))
            {
                return value;
            }
        }

        return null;
    }
}
