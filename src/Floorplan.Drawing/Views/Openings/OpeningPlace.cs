using Floorplan.Drawing.Scene;
using Floorplan.Model.Openings;
using Floorplan.Model.Shapes;

namespace Floorplan.Drawing.Views.Openings;

/// <summary>An opening on paper.</summary>
/// <param name="Reveal">The hole, through the whole wall.</param>
/// <param name="Start">West or north end on the wall's centre line.</param>
internal sealed record OpeningPlace(Opening Opening, PaperBox Reveal, PaperPoint Start, PaperPoint End)
{
    public static OpeningPlace Of(Opening opening, PlanTransform transform) => new(
        opening,
        transform.ToPaper(opening.Reveal.EnvelopeInternal),
        transform.ToPaper(opening.Start),
        transform.ToPaper(opening.End));

    public bool AlongX => Opening.Wall.RunsEastWest();

    public PaperPoint Middle => Reveal.Centre;
}
