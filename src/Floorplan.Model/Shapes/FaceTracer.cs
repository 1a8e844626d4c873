using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax;

namespace Floorplan.Model.Shapes;

/// <summary>Finds the outer edge of boxes that touch: their sides less what another box covers, joined where they run on.</summary>
internal static class FaceTracer
{
    public static IReadOnlyList<Face> Trace(IReadOnlyList<Box> boxes)
        => [.. Compass.All.SelectMany(side => Trace(boxes, side))];

    private static IEnumerable<Face> Trace(IReadOnlyList<Box> boxes, Side side)
    {
        var open = boxes.SelectMany(b => Uncovered(b, boxes, side)).OrderBy(f => f.At).ThenBy(f => f.From);
        Face? last = null;
        foreach (var face in open)
        {
            if (last is { } before && before.At == face.At && before.To == face.From)
            {
                last = before with { To = face.To };
                continue;
            }

            if (last is { } done)
            {
                yield return done;
            }

            last = face;
        }

        if (last is { } end)
        {
            yield return end;
        }
    }

    private static List<Face> Uncovered(Box box, IReadOnlyList<Box> boxes, Side side)
    {
        var at = box.Of(side);
        var rest = new List<(Length From, Length To)> { Along(box, side) };
        foreach (var other in boxes)
        {
            if (other.Of(side.Opposite()) == at)
            {
                var cover = Along(other, side);
                rest = [.. rest.SelectMany(r => Cut(r, cover))];
            }
        }

        return rest.ConvertAll(r => new Face(side, at, r.From, r.To));
    }

    private static IEnumerable<(Length From, Length To)> Cut((Length From, Length To) stretch, (Length From, Length To) cover)
    {
        var first = (stretch.From, To: Length.Min(stretch.To, cover.From));
        var second = (From: Length.Max(stretch.From, cover.To), stretch.To);
        if (cover.From >= stretch.To || cover.To <= stretch.From)
        {
            yield return stretch;
            yield break;
        }

        if (first.From < first.To)
        {
            yield return first;
        }

        if (second.From < second.To)
        {
            yield return second;
        }
    }

    private static (Length From, Length To) Along(Box box, Side side)
        => side.RunsEastWest() ? (box.West, box.East) : (box.South, box.North);
}
