using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Floorplan.Checks.Findings;
using Floorplan.Drawing.Frames;
using Floorplan.Language.Text;
using Floorplan.Model;

namespace Floorplan.Drawing.Sheets;

/// <summary>What all sheets of one plan share: title block, revisions, marks, cautions.</summary>
internal static class SheetHead
{
    private const int HashLength = 12;

    public static SheetContent For(SheetRequest request, Sheet sheet, int sheets)
    {
        var plan = request.Plan;
        var wish = Wish(plan, sheet.Number);
        return new SheetContent
        {
            Name = string.Create(CultureInfo.InvariantCulture, $"{sheet.Number}-{sheet.Name}"),
            Description = "",
            TitleBlock = TitleBlock(request, sheet, sheets),
            Units = plan.Units,
            Views = [],
            Revisions = plan.Head.Revisions,
            TrueNorth = plan.Shell.TrueNorth,
            DoorEnd = plan.Shell.DoorEnd,
            HitchEnd = plan.Shell.HitchEnd,
            Wish = wish,
            Place = wish?.Span ?? new SourceSpan(plan.Source, 0, 0),
        };
    }

    /// <summary>What the plan says of one sheet, and else of all.</summary>
    private static SheetWish? Wish(Plan plan, int sheet)
    {
        var all = plan.SheetWishes.LastOrDefault(w => w.Sheet == 0);
        return plan.SheetWishes.LastOrDefault(w => w.Sheet == sheet) is { } own
            ? own with { Paper = own.Paper ?? all?.Paper, Scale = own.Scale ?? all?.Scale }
            : all;
    }

    /// <summary><c>0 errors, 2 warnings, 1 note, 1 accepted</c>.</summary>
    public static string Checks(SheetRequest request)
    {
        var counts = FindingCounts.Of(request.Findings);
        string text = $"{Count(counts.Errors, "error")}, {Count(counts.Warnings, "warning")}";
        return text + (counts.Notes > 0 ? ", " + Count(counts.Notes, "note") : "")
            + (counts.Accepted > 0 ? string.Create(CultureInfo.InvariantCulture, $", {counts.Accepted} accepted") : "");
    }

    /// <summary><c>1 room</c>, <c>3 rooms</c>.</summary>
    public static string Count(int count, string what) => FindingCounts.Words(count, what);

    private static TitleBlockFields TitleBlock(SheetRequest request, Sheet sheet, int sheets)
    {
        var head = request.Plan.Head;
        var last = head.Revisions.Count > 0 ? head.Revisions[^1] : new Revision("", "", "");
        return new TitleBlockFields
        {
            Owner = head.Owner,
            Site = head.Site,
            Number = head.Number,
            Title = head.Title,
            SheetTitle = sheet.Title,
            Sheet = sheet.Number,
            Sheets = sheets,
            Date = last.Date,
            DrawnBy = head.DrawnBy,
            CheckedBy = head.CheckedBy,
            Revision = last.Mark,
            DocumentType = "Plan",
            SourceName = Path.GetFileName(request.Plan.Source.Path),
            SourceHash = Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(request.Plan.Source.Content)))[..HashLength],
            Tool = "Floorplan " + typeof(SheetHead).Assembly.GetName().Version!.ToString(3),
            Checks = Checks(request),
            Stop = FindingCounts.Of(request.Findings).Errors is > 0 and var errors
                ? $"NOT FOR CONSTRUCTION: {Count(errors, "error")} of the checks stand{(errors == 1 ? "s" : "")}"
                : "",
        };
    }
}
