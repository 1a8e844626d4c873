using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Floorplan.Cli.Input;
using Floorplan.Drawing.Dxf;
using Floorplan.Drawing.Faces;
using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Scene;
using Floorplan.Drawing.Schedules;
using Floorplan.Drawing.Sheets;
using Floorplan.Drawing.Sheets.Keeping;
using Floorplan.Drawing.Svg;
using Floorplan.Drawing.Views.Findings;
using Floorplan.Model;
using Floorplan.Model.Shells;
using Floorplan.Print.Pdf;
using Floorplan.Print.Pieces;
using Floorplan.Print.Png;

namespace Floorplan.Cli.Output.Drawings;

/// <summary>One plan's sheets and schedules, and the files to make of them.</summary>
internal sealed class DrawnPlan
{
    /// <summary>As long as that in the title block.</summary>
    private const int HashLength = 12;

    private readonly DrawFormat[] _formats;
    private readonly int _dpi;

    /// <param name="numbers">Which sheets; null for all of them and the schedules.</param>
    /// <param name="since">The revision that changes are clouded against; null for none.</param>
    /// <param name="kept">The sheets as they were drawn before; null lays every sheet out.</param>
    public DrawnPlan(
        Checked input, DrawFormat[] formats, int dpi, IReadOnlyCollection<int>? numbers, Checked? since = null, KeptSheets? kept = null)
    {
        _formats = formats;
        _dpi = dpi;
        Name = input.Input.BaseName;
        IsWhole = numbers is null;
        Hash = HashOf([input, .. since is null ? Array.Empty<Checked>() : [since]]);
        Input = input;
        Examination = input.Examination!;
        (Sheets, NotDrawn) = SheetSet.Make(DrawingRequest.Of(Examination, since), numbers, kept);
        Schedules = numbers is null ? Schedule.All(Examination.Facts!) : [];

        // Cut-outs come with the whole set, as schedules do.
        if (numbers is null && Has(DrawFormat.Dxf))
        {
            var hits = new FrameHits(Examination.Findings);
            CutOuts = [.. CutOutDxf.Of(Examination.Facts!, hits).Select(c => ($"{Name}-{c.Name}.dxf", c.Text))];
            NotCut = [.. hits.Walls(Examination.Facts!).Select(w => NotCutText(w.Wall, w.Findings))];
        }
    }

    public string Name { get; }

    /// <summary>The paper of a small printer that the set is cut for as well; null for none.</summary>
    public PaperSize? Print { get; init; }

    /// <summary>The set in pieces; null when none is asked for.</summary>
    public string? PrintFile => Print is null ? null : $"{Name}-print-{Print.ShortName}.pdf";

    public Checked Input { get; }

    /// <summary>All sheets are drawn, and not some only.</summary>
    public bool IsWhole { get; }

    /// <summary>Of all text that it is drawn from: the plan, the files that it uses, the revision that it is compared with.</summary>
    public string Hash { get; }

    public IReadOnlyCollection<DrawFormat> Formats => _formats;

    /// <summary>Every file that <see cref="Makers"/> makes.</summary>
    public IEnumerable<string> FileNames =>
    [
        .. Sheets.SelectMany(s => _formats.Select(f => FileOf(s, f))).Distinct(),
        .. PrintFile is { } pieces ? [pieces] : Array.Empty<string>(),
        .. CutOuts.Select(c => c.File),
        .. Schedules.Select(FileOf),
    ];

    public Examination Examination { get; }

    public IReadOnlyList<SheetScene> Sheets { get; }

    /// <summary>Sheets that the wished paper or scale cannot hold.</summary>
    public IReadOnlyList<NotDrawn> NotDrawn { get; }

    public IReadOnlyList<Schedule> Schedules { get; }

    /// <summary>Files for a cutting table, one a wall.</summary>
    public IReadOnlyList<(string File, string Text)> CutOuts { get; } = [];

    /// <summary>Walls that have holes and no such file, each a sentence with what stands against it.</summary>
    public IReadOnlyList<string> NotCut { get; } = [];

    public bool Has(DrawFormat format) => _formats.Contains(format);

    /// <summary>The file of one sheet; all sheets share one in PDF.</summary>
    public string FileOf(SheetScene sheet, DrawFormat format) => format switch
    {
        DrawFormat.Pdf => $"{Name}.pdf",
        DrawFormat.Dxf => $"{Name}-{sheet.Name}{DxfWriter.NameEnd}.dxf",
        _ => $"{Name}-{sheet.Name}.{format.ToString().ToLowerInvariant()}",
    };

    public string FileOf(Schedule schedule) => $"{Name}-{schedule.Name}.csv";

    /// <summary>Why a picture cannot be as fine as asked for; null when all can.</summary>
    public string? TooFine()
        => Has(DrawFormat.Png)
            && Sheets.FirstOrDefault(s => !PngWriter.Fits(s, _dpi)) is { } sheet
            && PngWriter.Size(sheet, _dpi) is var (width, height)
        ? string.Create(
            CultureInfo.InvariantCulture,
            $"{Name}-{sheet.Name}: at {_dpi} dots to the inch the picture would be {width} x {height} pixels, too many to make; --dpi "
                + $"{PngWriter.MostFor(sheet)} is the finest")
        : null;

    /// <summary>How many files may be made side by side; pictures take much memory.</summary>
    public int AtOnce => Has(DrawFormat.Png) && Sheets.Count > 0
        ? PngWriter.AtOnce(Sheets, _dpi, Environment.ProcessorCount)
        : Environment.ProcessorCount;

    /// <summary>What makes each file, in the order that they are written.</summary>
    public IEnumerable<Func<DrawnFile>> Makers()
    {
        foreach (var format in _formats.Where(f => f != DrawFormat.Pdf))
        {
            foreach (var sheet in Sheets)
            {
                yield return () => Make(sheet, format);
            }
        }

        if (Has(DrawFormat.Pdf) && Sheets.Count > 0)
        {
            yield return () => new DrawnFile($"{Name}.pdf", PdfWriter.Write(Sheets, Info(Examination.Plan!)));
        }

        if (PrintFile is { } pieces && Sheets.Count > 0)
        {
            yield return () => new DrawnFile(pieces, PdfWriter.Write(PiecePrint.Of(Sheets, Print!), Info(Examination.Plan!)));
        }

        foreach (var (file, text) in CutOuts)
        {
            yield return () => DrawnFile.OfText(file, text);
        }

        foreach (var schedule in Schedules)
        {
            yield return () => new DrawnFile(FileOf(schedule), CsvSchedule.Write(schedule));
        }
    }

    private string NotCutText(ShellWall wall, IReadOnlyList<MarkedFinding> findings)
        => $"{Name}: no cutting file of the {wall.NameIn(Examination.Plan!.Shell)} while this stands: "
            + string.Join("; ", findings.Select(f => FormattableString.Invariant($"{f.Finding.Message} [{f.Number}]")));

    private static string HashOf(IEnumerable<Checked> all)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        foreach (var text in all.SelectMany(c => c.Used.Prepend(c.Input.Source!)))
        {
            hash.AppendData(Encoding.UTF8.GetBytes(text.Content + "\0"));
        }

        return Convert.ToHexStringLower(hash.GetHashAndReset())[..HashLength];
    }

    private DrawnFile Make(SheetScene sheet, DrawFormat format) => format switch
    {
        DrawFormat.Png => new DrawnFile(FileOf(sheet, format), PngWriter.Write(sheet, _dpi)),
        DrawFormat.Dxf => DrawnFile.OfText(FileOf(sheet, format), DxfWriter.Write(sheet)),
        _ => DrawnFile.OfText(FileOf(sheet, format), SvgWriter.Write(sheet)),
    };

    private PdfInfo Info(Plan plan)
    {
        var last = plan.Head.Revisions.LastOrDefault();
        bool dated =
            DateTime.TryParseExact(
                last?.Date, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal | DateTimeStyles.AdjustToUniversal,
                out var date);
        string number = plan.Head.Number.Length > 0 ? plan.Head.Number + ", " : "";
        string revision = last is { Mark.Length: > 0 } ? $", revision {last.Mark}" : "";
        string subject = string.Create(CultureInfo.InvariantCulture, $"{number}{Sheets.Count} sheets{revision}");
        return new PdfInfo(
            Clean(plan.Head.Title), Clean(plan.Head.DrawnBy.Length > 0 ? plan.Head.DrawnBy : plan.Head.Owner), Clean(subject), dated
                ? date
                : null);

        static string Clean(string text) => Drawing.Lettering.SafeText.Clean(text);
    }
}
