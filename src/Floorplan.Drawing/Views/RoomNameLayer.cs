using System.Globalization;
using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Labels;
using Floorplan.Drawing.Lettering;
using Floorplan.Drawing.Scene;
using Floorplan.Language.Quantities;
using Floorplan.Model;
using Floorplan.Model.Rooms;

namespace Floorplan.Drawing.Views;

/// <summary>Name, area and class letter of every room, on empty floor where there is some. Drawn after all that takes floor.</summary>
public sealed class RoomNameLayer(Plan plan) : PlanLayer(plan)
{
    private const double SquareMetresPerSquareFoot = 0.3048 * 0.3048;
    private const double Clearance = 1;
    private const int Longest = 40;

    public override void Draw(PlanCanvas canvas)
    {
        var drawn = new DrawnIndex(canvas.Scene.Items.Where(i => i.Layer is not Layers.Floor));
        foreach (var room in Plan.Rooms.Where(r => !r.Floor.IsEmpty))
        {
            Draw(canvas, room, drawn);
        }
    }

    /// <summary><c>8.4 m²</c> or <c>90 sq ft</c>.</summary>
    public static string Area(double squareMetres, UnitSystem units) => units == UnitSystem.Metric
        ? squareMetres.ToString("0.0", CultureInfo.InvariantCulture) + " m²"
        : (squareMetres / SquareMetresPerSquareFoot).ToString("0", CultureInfo.InvariantCulture) + " sq ft";

    private void Draw(PlanCanvas canvas, Room room, DrawnIndex drawn)
    {
        var bounds = canvas.Transform.ToPaper(room.Bounds);
        var floor = new EmptyFloor(room.Floor, canvas.Transform, drawn.In(bounds));
        string letter = ZoneLook.Of(room.Class).Letter;
        IReadOnlyList<string> lines = [.. TextWrap.Lines(SafeText.Clean(room.Label, Longest), Math.Max(bounds.Width - 4, 12), Standard.SubtitleHeight, true, 2), Area(room.AreaSquareMetres, Plan.Units)];
        double tag = Standard.SubtitleHeight * 2.2;
        var (place, height) = Place(floor, bounds, lines, tag);
        string group = "room:" + room.Id;
        var target = place ?? bounds;
        canvas.Labels.Add(new LabelRequest
        {
            Id = group + ":name",
            Lines = lines,
            Target = place is null ? bounds : target with { Left = target.Left + tag },
            Positions = [LabelPosition.Inside, LabelPosition.InsideTopLeft, LabelPosition.InsideTopRight, LabelPosition.InsideBottomLeft, LabelPosition.InsideBottomRight],
            Priority = LabelPriority.RoomName,
            CapHeight = height,
            SmallestCapHeight = Standard.NoteHeight,
            Bold = true,
            MayTurn = true,
            LeadTo = Symbols.PaperShapes.Between(bounds.Centre, new(bounds.Right, bounds.Top), 0.1),
            Group = group,
        });
        canvas.Labels.Add(new LabelRequest
        {
            Id = group + ":class",
            Lines = [letter],
            Target = place is null ? bounds : target with { Right = target.Left + tag },
            Positions = [LabelPosition.Inside, LabelPosition.InsideTopLeft, LabelPosition.InsideTopRight, LabelPosition.InsideBottomLeft, LabelPosition.InsideBottomRight, .. Sides.AllRound],
            Priority = LabelPriority.RoomName,
            CapHeight = Standard.SubtitleHeight,
            SmallestCapHeight = Standard.NoteHeight,
            Bold = true,
            Within = bounds,
            Tag = TagShape.Hexagon,
            Group = group,
        });
    }

    private (PaperBox? Place, double Height) Place(EmptyFloor floor, PaperBox bounds, IReadOnlyList<string> lines, double tag)
    {
        foreach (double height in (double[])[Standard.SubtitleHeight, Standard.NoteHeight])
        {
            double width = lines.Max(l => TextMeasure.Width(l, height, true)) + tag + (2 * Clearance);
            double tall = Math.Max(TextMeasure.BlockHeight(lines.Count, height), tag) + (2 * Clearance);
            if (floor.Find(width, tall, bounds.Centre) is { } place)
            {
                return (place, height);
            }
        }

        return (null, Standard.NoteHeight);
    }
}
