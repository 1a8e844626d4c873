using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Labels;
using Floorplan.Drawing.Lettering;
using Floorplan.Drawing.Scene;
using Floorplan.Model;
using Floorplan.Model.Flows;

namespace Floorplan.Drawing.Views.Flows;

/// <summary>Where streams come in and go out: <c>Fillet crew in</c>, <c>Offal out</c>.</summary>
public sealed class FlowEndLayer(Plan plan, IReadOnlyList<FlowLeg> legs) : PlanLayer(plan)
{
    private const int LongestName = 30;

    public override void Draw(PlanCanvas canvas)
    {
        // Several streams may share a door: one label a place, or their texts would crowd each other.
        var ends = new Dictionary<(long X, long Y), (PaperPoint At, List<string> Lines, List<string> Marks)>();
        foreach (var leg in legs.Where(l => l.Route.Route is not null))
        {
            string name = SafeText.Clean(FlowLeg.NameOf(leg.Route.Flow), LongestName);
            var path = leg.Route.Route!.Path;
            if (leg.Route.Leg.From is OutsideStop)
            {
                Add(ends, canvas.Transform.ToPaper(path.StartPoint.Coordinate), name + " in", leg.Mark);
            }

            if (leg.Route.Leg.To is OutsideStop)
            {
                Add(ends, canvas.Transform.ToPaper(path.EndPoint.Coordinate), name + " out", leg.Mark);
            }
        }

        foreach (var (at, lines, marks) in ends.Values)
        {
            canvas.Labels.Add(new LabelRequest
            {
                Id = "end:" + marks[0] + ":" + lines[0],
                Lines = lines,
                Target = PaperBox.Around(at, 3, 3),
                Positions = LabelSides.AllRound,
                Priority = LabelPriority.Ends,
                CapHeight = Standard.NoteHeight,
                SmallestCapHeight = Standard.SmallestHeight,
                LeadTo = at,
                KeyMark = string.Join(", ", marks),
                Layer = Layers.Flow,
                Group = "leg:" + marks[0],
            });
        }
    }

    private static void Add(
        Dictionary<(long X, long Y), (PaperPoint At, List<string> Lines, List<string> Marks)> ends, PaperPoint at, string line, string mark)
    {
        const double cell = 8;
        var key = ((long)Math.Round(at.X / cell), (long)Math.Round(at.Y / cell));
        if (!ends.TryGetValue(key, out var end))
        {
            ends[key] = end = (at, [], []);
        }

        if (!end.Lines.Contains(line))
        {
            end.Lines.Add(line);
        }

        end.Marks.Add(mark);
    }
}
