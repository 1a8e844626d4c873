using Floorplan.Language.Details;
using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax.Statements;

namespace Floorplan.Model.Details;

/// <summary>
/// One row of the table of a thing: how a detail is read from a statement, and how it is printed. Its value is kept in
/// <see cref="SaidValues"/>; kinds, comparison, schedules and JSON go over the rows.
/// </summary>
public abstract class SaidRow<TStatement>(string word, Detail declared)
    where TStatement : Statement
{
    /// <summary>What it is called in sentences and JSON, such as <c>weight empty</c>.</summary>
    public string Word => word;

    /// <summary>The detail of the language that says it.</summary>
    public Detail Declared => declared;

    /// <summary>The box of the thing tells of it too, so that two plans are compared by that.</summary>
    public bool ToldByBox { get; init; }

    /// <summary>Null when the statement does not say it.</summary>
    /// <param name="quarters">Quarter turns clockwise that sides turn by.</param>
    internal abstract object? ReadFrom(TStatement statement, int quarters);

    internal abstract string PrintOf(object value, UnitSystem units);
}

/// <typeparam name="TStatement">The statement that says it.</typeparam>
/// <typeparam name="TValue">Its type in the model.</typeparam>
public sealed class SaidRow<TStatement, TValue> : SaidRow<TStatement>
    where TStatement : Statement
{
    private readonly Func<TStatement, int, object?> read;
    private readonly Func<TValue, UnitSystem, string> print;

    /// <param name="read">A <typeparamref name="TValue"/>, or null when the statement does not say it.</param>
    internal SaidRow(string word, Detail declared, Func<TStatement, int, object?> read, Func<TValue, UnitSystem, string> print)
        : base(word, declared)
    {
        this.read = read;
        this.print = print;
    }

    internal override object? ReadFrom(TStatement statement, int quarters) => read(statement, quarters);

    internal override string PrintOf(object value, UnitSystem units) => print((TValue)value, units);
}
