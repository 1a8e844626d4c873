using Floorplan.Checks.Findings;
using Floorplan.Drawing.Scene;
using Floorplan.Drawing.Sheets;
using Floorplan.Language.Diagnostics;
using Floorplan.Model.Limits;
using Floorplan.Tests.Drawing.Support;
using NetTopologySuite.Geometries;
using Xunit;

namespace Floorplan.Tests.Drawing.Views;

/// <summary>How heavy a finding is shows in the shape of its mark and of its balloon, not in colour.</summary>
public class FindingLayerTests
{
    /// <summary>Empty floor, so that every balloon finds room.</summary>
    private static readonly SheetRequest Hall = DrawnPlans.Request("""
        plan "Hall"
          units metric
        shell shed 12000 x 6000 x 3000
        room hall "Hall" dry from west to east
        """);

    private static readonly Finding Some = DrawnPlans.Request(DrawnPlans.Text("poultry-40ft")).Findings[0];

    [Fact]
    public void Errors_warnings_and_notes_have_different_marks_and_balloons()
    {
        var sheet = Draw(Severity.Error, Severity.Warning, Severity.Note);
        Assert.Equal(3, new[] { 1, 2, 3 }.Select(n => Look(sheet, n)).Distinct().Count());
        Assert.Equal(3, new[] { 1, 2, 3 }.Select(n => Corners(sheet, n)).Distinct().Count());
        Assert.All(sheet.Items<PolylineItem>().Where(p => p.Group == "finding:1"), p => Assert.Equal("#000000", p.Pen.Colour));
    }

    [Fact]
    public void An_accepted_finding_looks_like_a_note_whatever_it_was()
    {
        var sheet = Draw(Severity.Note, Severity.Error);
        var accepted = Draw([Made(Severity.Note, 0), Made(Severity.Error, 1) with { AcceptedBy = AnAcceptance() }]);
        Assert.NotEqual(Look(sheet, 1), Look(sheet, 2));
        Assert.Equal(Look(accepted, 1), Look(accepted, 2));
    }

    [Fact]
    public void The_legend_names_those_that_are_drawn_and_no_others()
    {
        Assert.Equal(["finding: error", "finding: note, accepted"], Legend(Draw(Severity.Error, Severity.Note)));
        Assert.Equal(["finding: warning"], Legend(Draw(Severity.Warning)));
        Assert.Empty(Legend(Draw()));
    }

    private static IReadOnlyList<SheetScene> Draw(params Severity[] severities) => Draw([.. severities.Select(Made)]);

    private static IReadOnlyList<SheetScene> Draw(IReadOnlyList<Finding> findings)
        => SheetSet.Draw(Hall with { Findings = findings }, [9]);

    private static Finding Made(Severity severity, int number) => Some with
    {
        Severity = severity,
        AcceptedBy = null,
        At = new Coordinate(2000 + (3500 * number), 3000),
    };

    private static Acceptance AnAcceptance() => new("clear-space", [], "Tried with the crew", "owner", default);

    private static int Corners(IReadOnlyList<SheetScene> sheet, int number)
        => sheet.Items<PolylineItem>().First(p => p.Group == $"finding:{number}" && p.Closed).Points.Count;

    /// <summary>Kinds and sizes of the shapes that are drawn for it, wherever it stands; leaders are no shapes.</summary>
    private static string Look(IReadOnlyList<SheetScene> sheet, int number) => string.Join(
        "; ",
        sheet.Items<SceneItem>().Where(i => i.Group == $"finding:{number}" && i is ArcItem or AreaItem or PolylineItem).Select(i => i switch
        {
            ArcItem arc => FormattableString.Invariant($"ring {arc.Radius:0.00}"),
            PolylineItem line => FormattableString.Invariant($"line of {line.Points.Count}"),
            AreaItem area => FormattableString.Invariant($"{area.Fill} of {PaperBox.Of(area.Rings[0]).Width:0.00}"),
            _ => "",
        }));

    private static string[] Legend(IReadOnlyList<SheetScene> sheet) =>
    [
        .. sheet.Texts().Where(t => t.Layer == "A-ANNO-LEGN" && t.Text.StartsWith("finding: ", StringComparison.Ordinal))
            .Select(t => t.Text),
    ];
}
