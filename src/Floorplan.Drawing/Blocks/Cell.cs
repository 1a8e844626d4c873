using Floorplan.Sizing.Working;

namespace Floorplan.Drawing.Blocks;

/// <summary>
/// One cell of a table, with the figures whose values it prints. Plain text is a cell without figures; a figure prints its own text.
/// </summary>
/// <remarks>
/// A cell that prints worked-out numbers in its own words is <c>new Cell($"{load.Text}, {share.Text}", [load, share])</c>. A test gathers
/// the figures of all cells, labels and findings of a plan by name and thing, and fails where two of them are not the same object.
/// </remarks>
public readonly record struct Cell(string Text, IReadOnlyList<Figure>? Printed = null)
{
    public IReadOnlyList<Figure> Figures => Printed ?? [];

    public static implicit operator Cell(string text) => new(text);

    public static implicit operator Cell(Figure figure) => new(figure.Text, [figure]);

    public override string ToString() => Text;
}
