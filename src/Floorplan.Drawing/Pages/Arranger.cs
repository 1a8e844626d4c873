using Floorplan.Drawing.Blocks;
using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Pages.Parts;

namespace Floorplan.Drawing.Pages;

/// <summary>Finds the arrangement of a sheet with the fewest pages and the least blank paper, by trying all of a small number.</summary>
internal sealed class Arranger(SheetContent content, PageSpace space)
{
    /// <summary>Columns that tables can be read in, mm; own choice.</summary>
    private const double Narrowest = 84;
    private const double Widest = 190;

    /// <summary>The same for a legend, notes and small tables; own choice.</summary>
    private const double NarrowestSide = 60;

    /// <summary>ISO 3098, the step above notes: for sheets with room to spare.</summary>
    private const double LargeText = 3.5;
    private const double LargeTitle = 5;

    /// <summary>A step to a smaller picture is as bad as this share of a page; own choice.</summary>
    private const double ForLarger = 0.25;

    /// <summary>A table with broken words is as bad as so many pages; own choice.</summary>
    private const double TooTight = 3;

    /// <summary>The same of a row with a short text on three lines or more; own choice.</summary>
    private const double ForBroken = 0.08;

    /// <summary>What differs by less is as good.</summary>
    private const double Better = 1e-9;

    /// <summary>Paper between rows, mm: more of it where the last page would stay half blank; own choice.</summary>
    private static readonly double[] Airs = [0, 0.8, 1.8, 3];

    private static readonly (bool Whole, double Air)[] Ways
        = [.. new[] { true, false }.SelectMany(whole => Airs.Select(air => (whole, air)))];

    private readonly DrawingStandard standard = DrawingStandard.For(content.Units);
    private readonly BlockMeasures measures = new(content);
    private readonly Dictionary<(double Width, double Height), IReadOnlyList<ColumnBlock>> blocks = [];
    private readonly List<PlacedRow> tried = [];
    private KeyTable first = new("", [], []);
    private KeyTable last = new("", [], []);

    /// <summary>Null where the views do not fit at any of these scales.</summary>
    /// <param name="denominators">From large to small pictures.</param>
    public (Arrangement Arrangement, double Cost)? Best(IEnumerable<double> denominators)
    {
        (Arrangement Arrangement, double Cost)? best = null;
        double lead = 0;
        foreach (double denominator in denominators)
        {
            ISheetView[] views = [.. content.Views.SelectMany(v => ViewParts.Of(v, denominator, space, content.Units))];
            foreach (bool centred in (bool[])[false, true])
            {
                // With fewer rows of views on a page, text stands beside the last of them and not on a page of its own.
                int rows = int.MaxValue;
                while (rows > 0 && ViewRows.Pack(views, denominator, space, content.Units, centred, rows) is { } pages)
                {
                    Try(new ViewPages(space, denominator, pages.Views), ref best, lead);
                    rows = pages.MostRows - 1;
                }
            }

            lead += ForLarger;
        }

        return best;
    }

    /// <summary>The best text round views that are placed already, with what came up while they were drawn.</summary>
    /// <param name="keys">What marks in the views mean; it comes first.</param>
    /// <param name="notShown">What found no room in the views; it comes last.</param>
    public Arrangement WithText(Arrangement arrangement, KeyTable keys, KeyTable notShown)
    {
        if (keys.Rows.Count + notShown.Rows.Count == 0)
        {
            return arrangement;
        }

        (first, last) = (keys, notShown);
        blocks.Clear();
        (Arrangement Arrangement, double Cost)? best = null;
        Try(arrangement.Views, ref best);
        return best!.Value.Arrangement;
    }

    public FlowedText Flow(Arrangement arrangement) => arrangement.Flow(width => Blocks(width, arrangement.Text));

    private void Try(ViewPages views, ref (Arrangement Arrangement, double Cost)? best, double lead = 0)
    {
        // A page never costs less than 1.
        int least = Math.Max(1, views.Pages.Count);
        foreach (var text in (DrawingStandard[])[standard, standard with { NoteHeight = LargeText, SubtitleHeight = LargeTitle }])
        {
            double narrowest = NarrowestSide * text.NoteHeight / standard.NoteHeight;
            var columns = views.Sides(narrowest);

            // What stands beside the views is the same for columns of any width under them.
            var beside = columns.Any(c => c is not null)
                ? Airs.ToDictionary(a => a, a => new SideText(columns, width => Blocks(width, text), a)) : [];
            foreach (double width in Widths(views, text.NoteHeight / standard.NoteHeight))
            {
                if (least >= Limit(best, lead))
                {
                    return;
                }

                double tight = Blocks(width, text).Sum(b => (b.IsTight ? TooTight : 0) + (b.Broken * ForBroken));
                foreach (var (whole, air) in Ways)
                {
                    TryOne(new Arrangement(views, width, text, whole, air), null, ref best, lead + tight);
                }

                foreach (var (whole, air) in Ways.Where(w => beside.TryGetValue(w.Air, out var side) && side.Taken.Count > 0))
                {
                    TryOne(new Arrangement(views, width, text, whole, air, narrowest), beside[air], ref best, lead + tight);
                }
            }
        }

        // A try has to stay under it with its pages; more is what it costs besides.
        static double Limit((Arrangement Arrangement, double Cost)? best, double more)
            => best is { } known ? known.Cost - Better - more : double.PositiveInfinity;

        void TryOne(Arrangement arrangement, SideText? side, ref (Arrangement Arrangement, double Cost)? best, double more)
        {
            double limit = Limit(best, more);
            if (least >= limit)
            {
                return;
            }

            int most = (int)Math.Min(Arrangement.MostPages, limit);
            var flow = arrangement.Flow(Blocks(arrangement.ColumnWidth, arrangement.Text), side, most, tried);
            double cost = flow.Complete ? arrangement.Cost(flow, side, limit) : double.PositiveInfinity;
            if (best is null || cost < limit)
            {
                best = (arrangement, cost + more);
            }
        }
    }

    /// <summary>Of columns that share a page evenly, and of those that stand beside the views.</summary>
    private IEnumerable<double> Widths(ViewPages views, double larger)
    {
        var widths = Enumerable.Range(1, 12).Select(space.ColumnWidth).Where(Useful).ToList();
        return widths.Count > 0 ? widths.Concat(views.WidthsBeside.Where(Useful)).Distinct()
            : [space.ColumnWidth(Math.Max(1, (int)(space.Width / Narrowest)))];

        bool Useful(double width) => width >= Narrowest * larger && width <= Widest * larger;
    }

    private IReadOnlyList<ColumnBlock> Blocks(double width, DrawingStandard text)
    {
        if (!blocks.TryGetValue((width, text.NoteHeight), out var known))
        {
            blocks[(width, text.NoteHeight)] = known =
                [.. Key(first, width, text), .. measures.Of(width, text), .. Key(last, width, text)];
        }

        return known;
    }

    private static IEnumerable<ColumnBlock> Key(KeyTable table, double width, DrawingStandard text)
        => table.Rows.Count > 0 ? [new(new MeasuredTable(table, text).At(width), width, text)] : [];
}
