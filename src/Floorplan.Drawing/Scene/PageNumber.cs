namespace Floorplan.Drawing.Scene;

/// <summary>How a page of a set is called.</summary>
public static class PageNumber
{
    /// <summary><c>6</c>, and on continuation sheets <c>6.2</c>.</summary>
    /// <param name="page">Of the sheet, from 1.</param>
    public static string Of(int sheet, int page) =>
        page == 1 ? FormattableString.Invariant($"{sheet}") : FormattableString.Invariant($"{sheet}.{page}");
}
