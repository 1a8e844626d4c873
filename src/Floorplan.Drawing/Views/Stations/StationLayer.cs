using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Labels;
using Floorplan.Drawing.Lettering;
using Floorplan.Drawing.Scene;
using Floorplan.Model;
using Floorplan.Model.Stations;
using NetTopologySuite.Geometries;

namespace Floorplan.Drawing.Views.Stations;

/// <summary>Stations, stores, bins and sinks: outline, symbol, item number, and name and size where they fit.</summary>
public sealed class StationLayer(Plan plan, StationLook look) : PlanLayer(plan)
{
    private const int LongestName = 60;
    private const double Inset = 0.6;

    /// <summary>In a smaller outline the number would hide the symbol; it stands beside it.</summary>
    private const double SmallestForNumber = 9;

    public override Envelope Extent
    {
        get
        {
            var extent = new Envelope();
            foreach (var station in Plan.Stations)
            {
                extent.ExpandToInclude(station.Footprint.EnvelopeInternal);
            }

            return extent;
        }
    }

    public override IEnumerable<LegendEntry> Legend
    {
        get
        {
            if (Plan.Stations.Any(s => !s.Hung))
            {
                yield return new LegendEntry("station, see the key", (scene, box) => scene.Rectangle(box, Outline(false), Layers.Legend));
            }

            if (Plan.Stations.Any(s => s.Hung))
            {
                yield return new LegendEntry("hung over the floor", (scene, box) => scene.Rectangle(box, Outline(true), Layers.Legend));
            }
        }
    }

    public override void Draw(PlanCanvas canvas)
    {
        // What hangs is drawn after what stands, so that it shows over it.
        foreach (var station in Plan.Stations.OrderBy(s => s.Hung))
        {
            string group = "station:" + station.Id;
            var rings = canvas.Transform.Rings(station.Footprint);
            var brush = canvas.Brush(Layers.Equipment, group);
            if (!station.Hung)
            {
                canvas.Scene.Fill(rings, Palette.White, Layers.Equipment, group, Band.Object);
            }

            foreach (var ring in rings)
            {
                canvas.Scene.Polyline(ring, true, Outline(station.Hung), Layers.Equipment, group);
            }

            StationSymbols.Draw(brush, station, canvas.Transform);
            canvas.Labels.Add(new LabelArea(group, LabelAreaKind.Thing, rings));
            Label(canvas, station, group);
        }
    }

    private Pen Outline(bool hung) => hung
        ? new Pen(Standard.Narrow, Palette.Black, Dashes.Dashed(Standard.Narrow))
        : new Pen(look == StationLook.Full ? Standard.Text : Standard.Narrow);

    private void Label(PlanCanvas canvas, Station station, string group)
    {
        var box = canvas.Transform.ToPaper(station.Bounds);
        LabelPosition[] inside =
        [
            LabelPosition.InsideTopLeft, LabelPosition.InsideBottomLeft, LabelPosition.InsideTopRight, LabelPosition.InsideBottomRight,
            LabelPosition.Inside,
        ];
        canvas.Labels.Add(new LabelRequest
        {
            Id = group + ":item",
            Lines = [FormattableString.Invariant($"{station.Item}")],
            Target = box,
            Positions = station.Role == StationRole.Sink || Math.Min(box.Width, box.Height) < SmallestForNumber
                ? [.. LabelSides.AllRound, .. inside]
                : [.. inside, .. LabelSides.AllRound],
            Priority = LabelPriority.Item,
            CapHeight = Standard.NoteHeight,
            SmallestCapHeight = Standard.TagHeight,
            Tag = TagShape.Circle,
            LeadTo = box.Centre,
            OffOthers = true,
            Group = group,
        });
        if (look != StationLook.NumberOnly && station.Role != StationRole.Sink && Name(station, box) is { } lines)
        {
            canvas.Labels.Add(new LabelRequest
            {
                Id = group + ":name",
                Lines = lines,
                Target = box,
                Positions =
                    [
                        LabelPosition.Inside, LabelPosition.InsideTopRight, LabelPosition.InsideBottomRight, LabelPosition.InsideBottomLeft,
                        LabelPosition.InsideTopLeft],
                Priority = LabelPriority.StationName,
                CapHeight = Standard.NoteHeight,
                SmallestCapHeight = Standard.SmallestHeight,
                MayTurn = box.Height > box.Width,
                MayLead = false,
                Optional = true,
                Within = box.Grown(-Inset),
                Group = group,
            });
        }
    }

    /// <summary>Name and size broken to the longer side; null when the station is too small for any.</summary>
    private IReadOnlyList<string>? Name(Station station, PaperBox box)
    {
        double height = Standard.SmallestHeight;
        double along = Math.Max(box.Width, box.Height) - (2 * Inset);
        double across = Math.Min(box.Width, box.Height) - (2 * Inset);

        // Across, a label may also stand beside the item number, so it is broken to what is left of the longer side.
        double bubble = Standard.NoteHeight * 2.2;
        int most = (int)((across - (height * (TextMeasure.Ascent + TextMeasure.Descent))) / (height * TextMeasure.LinePitch)) + 1;
        if (across < TextMeasure.BlockHeight(1, height) || along < 3 * bubble)
        {
            return null;
        }

        string name = SafeText.Clean(station.Caption, LongestName);
        if (name.Split(' ').Any(word => TextMeasure.Width(word, height) > along - bubble))
        {
            return null;
        }

        string size = ItemSize.OnFloor(station, Plan.Units);
        var lines = TextWrap.Lines(name, along - bubble, height, false, Math.Max(1, most)).ToList();
        if (look == StationLook.Full && lines.Count < most && TextMeasure.Width(size, height) <= along - bubble)
        {
            lines.Add(size);
        }

        return lines;
    }
}
