using System.Globalization;
using Floorplan.Drawing.Blocks;
using Floorplan.Drawing.Frames;
using Floorplan.Language.Quantities;
using Floorplan.Sizing.Frames;

namespace Floorplan.Drawing.Sheets.OpeningsAndFrames;

/// <summary>What is sawn from which bar.</summary>
internal static class StockTable
{
    public static KeyTable Of(StockPlan stock, UnitSystem units) => new(
        $"Bars of {Tape.ForSteel(units).Cell(stock.Bar)}, saw cut {QuantityText.Bought(stock.Kerf, units)}",
        ["Bar", "Pieces", "Left"],
        [
            [$"{stock.Section.Name(units)}: {SheetHead.Count(stock.Bars.Count, "bar")}, "
                + $"{(stock.IsFewest ? "the fewest" : "not proven to be the fewest")}"],
            .. stock.Bars.Select((bar, i) => (IReadOnlyList<Cell>)
            [
                (i + 1).ToString(CultureInfo.InvariantCulture),
                string.Join(
                    ", ", bar.Pieces.GroupBy(p => p)
                        .Select(g => $"{(g.Count() > 1 ? FormattableString.Invariant($"{g.Count()} × ") : "")}{g.Key.For} {g.Key.Part}")),
                Tape.ForSteel(units).Cell(bar.Left),
            ]),
            .. stock.TooLong.Select(p => (IReadOnlyList<Cell>)["-", $"{p.For} {p.Part} is longer than a bar", ""]),
        ]);
}
