using Floorplan.Language.Quantities;
using Floorplan.Model;

namespace Floorplan.Drawing.Frames;

/// <summary>What would hold a sheet whose wished paper or scale does not.</summary>
internal static class SheetWishes
{
    /// <param name="content">With the wish that cannot be met.</param>
    /// <param name="holds">Whether the sheet can be drawn with a wish.</param>
    public static NotDrawn Refuse(SheetContent content, Func<SheetWish, bool> holds)
    {
        var wish = content.Wish ?? new SheetWish(content.TitleBlock.Sheet, null, null, content.Place);
        string paper = wish.Paper ?? content.Paper.Name;
        string scale = wish.Scale is { } wished ? ScaleSeries.Text(wished, content.Units) : "";
        string message = scale.Length > 0 ? $"it does not fit on {paper} at {scale}" : $"it does not fit on {paper}";
        var ways = Ways(content, wish).Where(holds).Take(2).Select(w => Text(w, content.Units)).ToList();
        return new NotDrawn(
            content.TitleBlock.Sheet,
            $"sheet {content.TitleBlock.Sheet} ({content.TitleBlock.SheetTitle}) is not drawn: {message}",
            ways.Count == 0 ? "leave paper and scale out" : $"write {string.Join(", or ", ways)}, or leave the line out",
            wish.Span);
    }

    /// <summary>First what keeps the wished scale, then what keeps the wished paper, each from near to far.</summary>
    private static IEnumerable<SheetWish> Ways(SheetContent content, SheetWish wish)
    {
        foreach (var larger in PaperSize.For(content.Units).Where(p => p.Area > content.Paper.Area))
        {
            yield return wish with { Paper = larger.Name };
        }

        foreach (double scale in ScaleSeries.For(content.Units).Where(s => wish.Scale is { } wished && s > wished))
        {
            yield return wish with { Scale = scale };
        }
    }

    private static string Text(SheetWish wish, UnitSystem units) => string.Join(
        " with ",
        new[]
        {
            wish.Paper is { } paper ? $"`paper {paper}`" : "",
            wish.Scale is { } scale ? $"`scale {ScaleSeries.Ratio(scale)}`" : "",
        }.Where(t => t.Length > 0));
}
