using Floorplan.Checks.Framework;
using Floorplan.Checks.Limits;
using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Scene;
using Floorplan.Drawing.Views;
using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax;
using Floorplan.Model;
using Floorplan.Model.Stations;

namespace Floorplan.Drawing.Sheets.Stations;

/// <summary>
/// How far hands go from each standing place: half circles from the edge of the bench, with the radii that <c>out-of-reach</c> measures
/// by.
/// </summary>
internal sealed class ReachLayer(Plan plan) : PlanLayer(plan)
{
    private readonly IReadOnlyList<(string Who, double Radius)> reaches = Reaches(plan);

    /// <summary>What the arcs are, for the notes of the sheet.</summary>
    public static string NoteOf(Plan plan)
        => new PlanLimits(plan).Holding(RuleCatalogue.Find("out-of-reach")!).Any(l => l.SetBy is not null)
        ? "Reach is measured from the edge of the bench in front of a standing place, and is the one that the plan sets."
        : "Reach is measured from the edge of the bench in front of a standing place (ANSUR II thumb-tip reach); what is past the inner "
            + "arc a small person cannot work at.";

    /// <summary>A reach is a limit and no dimension: it is printed as findings print it.</summary>
    public override IEnumerable<LegendEntry> Legend => Plan.Stations.Any(s => s.Workers.Count > 0)
        ? reaches.Select((reach, i) => new LegendEntry(
            $"{reach.Who}, {QuantityText.Length(Length.FromMillimetres(Math.Round(reach.Radius)), Plan.Units)}",
            (scene, box) => scene.Line(new(box.Left, box.Centre.Y), new(box.Right, box.Centre.Y), PenOf(i), Layers.Legend)))
        : [];

    public override void Draw(PlanCanvas canvas)
    {
        foreach (var station in Plan.Stations)
        {
            foreach (var worker in station.Workers)
            {
                string group = FormattableString.Invariant($"reach:{station.Id}:{worker.Number}");
                double start = Start(worker);
                for (int i = 0; i < reaches.Count; i++)
                {
                    canvas.Scene.Arc(canvas.Transform.ToPaper(worker.Front), canvas.Transform.Size(reaches[i].Radius), start, start
                        + 180, PenOf(i), Layers.Worker, group);
                }
            }
        }
    }

    /// <summary>The inner arc dashed, the outer one long-dashed with double dots, as limits of movement are drawn (ISO 128).</summary>
    private Pen PenOf(int index)
        => new(Standard.Narrow, Palette.Black, index == 0 ? Dashes.Dashed(Standard.Narrow) : Dashes.LongDashDoubleDot(Standard.Narrow));

    /// <summary>Where a half circle before the person starts, in degrees.</summary>
    private static double Start(WorkerPlace worker) => worker.Stands switch
    {
        Side.South => 0,
        Side.North => 180,
        Side.West => 270,
        _ => 90,
    };

    /// <summary>
    /// Of one hand: what takes both is measured by the rule. The plan's own figure is for either, and then it is the only one.
    /// </summary>
    private static IReadOnlyList<(string Who, double Radius)> Reaches(Plan plan) =>
    [
        .. new PlanLimits(plan).Holding(RuleCatalogue.Find("out-of-reach")!)
            .Where(l => l.SetBy is not null || l.Published.Body is { BothHands: false })
            .Select(l => (l.SetBy is null ? l.Published.Key : "reach set in this plan", l.Value)),
    ];
}
