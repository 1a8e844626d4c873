using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Labels;
using Floorplan.Drawing.Lettering;
using Floorplan.Drawing.Scene;
using Floorplan.Model.Rooms;
using Floorplan.Sizing;

namespace Floorplan.Drawing.Views.Rooms;

/// <summary>Name, area and class letter of every room, on empty floor where there is some. Drawn after all that takes floor.</summary>
public sealed class RoomNameLayer(PlanFacts facts) : PlanLayer(facts.Plan)
{
    private const double Clearance = 0.7;

    /// <summary>Width of the class tag in letter heights, and its height over its width.</summary>
    private const double TagShare = 3;
    private const double TagHeight = 0.75;

    /// <summary>The floor that a number takes which stands for the name, paper mm.</summary>
    private const double KeyWidth = 5;
    private const double KeyHeight = 3.5;

    /// <summary>No name is broken to less, paper mm.</summary>
    private const double SmallestWidth = 14;
    private const int Longest = 60;

    /// <summary>A name is shortened, since tables say it whole, but a line keeps this many letters.</summary>
    private const int FewestLetters = 8;

    public override void Draw(PlanCanvas canvas)
    {
        var shell = canvas.Transform.ToPaper(Plan.Shell.Outside.EnvelopeInternal);
        var drawn = new DrawnIndex(canvas.View.Box, canvas.Scene.Items.Where(i => i.Layer is not Layers.Floor));
        foreach (var room in Plan.Rooms.Where(r => !r.Floor.IsEmpty))
        {
            Draw(canvas, room, drawn, shell);
        }
    }

    private void Draw(PlanCanvas canvas, Room room, DrawnIndex drawn, PaperBox shell)
    {
        var bounds = canvas.Transform.ToPaper(room.Bounds);
        var floor = new EmptyFloor(room.Floor, canvas.Transform, drawn.In(bounds));
        var middle = canvas.Transform.ToPaper(room.Floor.InteriorPoint.Coordinate);
        string group = "room:" + room.Id;
        var (lines, height, place, (corner, letter)) = Choose(room, floor, bounds, middle);
        canvas.Labels.Add(new LabelRequest
        {
            Id = group + ":name",
            Lines = lines,
            Figures = [facts.RoomSizes[room.Id].Area],
            KeyText = $"{SafeText.Clean(room.Label)} {facts.RoomSizes[room.Id].Area.Text}",
            Target = place ?? PaperBox.Around(middle, 1, 1),
            Positions = place is null ? [] : [LabelPosition.Inside],
            Priority = LabelPriority.RoomName,
            CapHeight = height,
            SmallestCapHeight = height,
            Bold = true,
            LeadTo = middle,
            KeyTarget = (corner is { } tag ? floor.Less(tag) : floor).Find(KeyWidth, KeyHeight, middle) ?? bounds,
            KeyMark = SafeText.Clean(room.Id),
            NotOver = shell,
            Group = group,
        });

        // Not under the name: a line that leads to it would cut the name.
        var free = (place is { } taken ? floor.Less(taken) : floor).Find(1, 1, middle)?.Centre ?? middle;
        canvas.Labels.Add(new LabelRequest
        {
            Id = group + ":class",
            Lines = [ZoneLook.Of(room.Class).Letter],
            KeyText = $"{ZoneLook.Of(room.Class).Letter} of {SafeText.Clean(room.Label)}",
            Target = corner ?? PaperBox.Around(middle, 1, 1),
            Positions = corner is null ? [] : [LabelPosition.Inside],
            Priority = LabelPriority.RoomName,
            CapHeight = letter,
            SmallestCapHeight = Standard.TagHeight,
            Bold = true,
            LeadTo = free,

            // Where its own floor is full, a leader says which room it is of.
            Tag = TagShape.Hexagon,
            Group = group,
        });
    }

    /// <summary>A place for the class letter beside the name, smaller where floor is short.</summary>
    private (PaperBox? Place, double Height) Tag(EmptyFloor floor, PaperBox? name, PaperPoint middle)
    {
        foreach (double height in (double[])[Standard.SubtitleHeight, Standard.NoteHeight, Standard.TagHeight])
        {
            double tag = height * TagShare;
            if (floor.Find(tag, tag * TagHeight, name is { } by ? new(by.Left - (tag / 2), by.Centre.Y) : middle) is { } place)
            {
                return (place, height);
            }
        }

        return (null, Standard.NoteHeight);
    }

    /// <summary>The first way of writing the name that leaves floor for the letter too.</summary>
    private (IReadOnlyList<string> Lines, double Height, PaperBox? Place, (PaperBox? Place, double Height) Tag) Choose(
        Room room, EmptyFloor floor, PaperBox bounds, PaperPoint middle)
    {
        (IReadOnlyList<string> Lines, double Height, PaperBox? Place, (PaperBox? Place, double Height) Tag)? first = null;
        foreach (var (lines, height, place) in Names(room, floor, bounds))
        {
            var way = (lines, height, place, Tag(place is { } taken ? floor.Less(taken) : floor, place, middle));
            first ??= way;
            if (way.Item4.Place is not null && place is not null)
            {
                return way;
            }
        }

        return first!.Value;
    }

    /// <summary>
    /// From the largest lettering, in two lines or one, that finds empty floor to the name shortened to what does, and last the name
    /// without a place.
    /// </summary>
    private IEnumerable<(IReadOnlyList<string> Lines, double Height, PaperBox? Place)> Names(Room room, EmptyFloor floor, PaperBox bounds)
    {
        string name = SafeText.Clean(room.Label, Longest);
        string area = facts.RoomSizes[room.Id].Area.Text;
        double widest = Math.Max(SmallestWidth, bounds.Width - (2 * Clearance));
        foreach (double height in (double[])[Standard.SubtitleHeight, Standard.NoteHeight])
        {
            double word = name.Split(' ').Max(w => TextMeasure.Width(w, height, true)) + Clearance;
            IReadOnlyList<string>[] ways =
            [
                [name, area], [.. Wrapped(widest), area], [name + "  " + area], [.. Wrapped(Math.Max(word, widest / 2)), area],
                [.. Wrapped(word), area],
            ];
            IReadOnlyList<string> Wrapped(double width) => TextWrap.Lines(name, width, height, true, 4);
            foreach (var lines in ways)
            {
                double width = lines.Max(l => TextMeasure.Width(l, height, true)) + (2 * Clearance);
                double tall = TextMeasure.BlockHeight(lines.Count, height) + (2 * Clearance);
                if (floor.Find(width, tall, bounds.Centre) is { } place)
                {
                    yield return (lines, height, place);
                }
            }
        }

        foreach (double height in (double[])[Standard.NoteHeight])
        {
            foreach (double share in (double[])[1, 0.75, 0.5])
            {
                IReadOnlyList<string> lines = [.. TextWrap.Lines(name, widest * share, height, true, 2), area];
                double width = lines.Max(l => TextMeasure.Width(l, height, true)) + (2 * Clearance);
                if (lines[0].Length >= FewestLetters
                    && floor.Find(width, TextMeasure.BlockHeight(lines.Count, height) + (2 * Clearance), bounds.Centre) is { } place)
                {
                    yield return (lines, height, place);
                }
            }
        }

        yield return ([.. TextWrap.Lines(name, 3 * SmallestWidth, Standard.NoteHeight, true, 4), area], Standard.NoteHeight, null);
    }
}
