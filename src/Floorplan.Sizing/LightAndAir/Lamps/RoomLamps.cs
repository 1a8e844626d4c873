using Floorplan.Language.Quantities;
using Floorplan.Model.Rooms;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.LightAndAir.Lamps;

/// <summary>Lamps of one room for the level that the plan says, by the lumen method.</summary>
/// <param name="Count">Battens in <paramref name="Rows"/> rows of <paramref name="Each"/>.</param>
/// <param name="Spacing">Along a row and from row to row, mm; the first is half of it from the wall.</param>
/// <param name="Reached">The level with that many.</param>
internal sealed record RoomLamps(
    Room Room, Figure Level, Figure Index, Figure Count, int Rows, int Each, (double Along, double Across) Spacing, Figure Reached)
{
    public const double Lumens = 4000;
    public const double Watts = 40;

    /// <summary>Of <see cref="Lumens"/> and <see cref="Watts"/>.</summary>
    public const string Batten = "4000 lm and 40 W";

    /// <summary>From the ceiling to the lamp, and from the floor to the work, m; own assumption.</summary>
    private const double Hangs = 0.1;
    private const double Work = 0.9;

    /// <summary>Where a ceiling is no higher than the work, m; own bound.</summary>
    private const double LeastHigh = 0.3;

    private const double Kept = 0.7;

    /// <summary>Lamps stand at most so many times as far apart as they hang above the work; of the batten of the table.</summary>
    private const double MostSpacing = 1.5;

    /// <summary>More lamps than this in a room are a slip of the plan; own bound.</summary>
    private const double MostLamps = 10_000;

    private static readonly Source Method = new("lumen method, CIBSE", Origin.FoundInPublicCopy);
    private static readonly Source BattenSource = new("a common batten of 1.2 m; own assumption", Origin.OwnAssumption);
    private static readonly Source Table = new("table of one open batten, 70/50/20, a lighting handbook", Origin.FoundInPublicCopy);
    private static readonly Source Maintenance = new("average room 0.7; a lamp maker's page", Origin.FoundInSecondaryCopy);
    private static readonly Source Own = new("own assumption", Origin.OwnAssumption);

    /// <summary>Null where the level is no lamp's.</summary>
    public static RoomLamps? Of(PlanFacts facts, RoomLight light, Workings w)
    {
        var room = light.Room;
        var area = facts.RoomSizes[room.Id].Area;
        double high = Math.Max(LeastHigh, room.CeilingHeight.Metres - Hangs - Work);
        double round = room.Floor.ExteriorRing.Length / 1000;
        if (light.Level.Value <= 0 || area.Value <= 0 || round <= 0)
        {
            return null;
        }

        string rise = WorkingText.Long(high * 1000, w.Units);
        var index = w.Of(
            "room index", room.Id, LumenMethod.Index(area.Value, round, high), QuantityKind.Ratio,
            QuantityText.Plain(LumenMethod.Index(area.Value, round, high)),
            "2 x area / (length round the room x height of lamps over work)",
            $"2 x {w.Fine(area.Value, Measure.Area)} / ({WorkingText.Long(round * 1000, w.Units)} x {rise})", Method,
            FigureInput.Of(area), FigureInput.Taken("height of lamps over work, ceiling less 1 m", rise, Own));
        double factor = LumenMethod.Utilisation(index.Value);
        double lamps = LumenMethod.Lamps(light.Level.Value, area.Value, Lumens, factor, Kept);
        if (lamps > MostLamps)
        {
            return null;
        }

        var (rows, each) = Layout(room, lamps, high);
        string flux = FormattableString.Invariant($"{Lumens} lm");
        string used = QuantityText.Plain(factor, 3);
        string kept = QuantityText.Plain(Kept);
        int count = rows * each;
        var number = w.Of(
            "lamps", room.Id, count, QuantityKind.Count, QuantityText.Count(count, "lamp"),
            "level x area / (light of one x share that reaches the work x what dirt and age leave), rounded up to whole rows",
            $"{light.Level.Text} x {w.Fine(area.Value, Measure.Area)} / ({flux} x {used} x {kept}) = {QuantityText.Plain(lamps)}", Method,
            FigureInput.Of(light.Level), FigureInput.Of(area), FigureInput.Of(index), FigureInput.Taken("light of one", flux, BattenSource),
            FigureInput.Taken("share that reaches the work", used, Table),
            FigureInput.Taken("what dirt and age leave", kept, Maintenance));
        var reached = w.Of(
            "light reached", room.Id, LumenMethod.Lux(count, area.Value, Lumens, factor, Kept), Measure.Illuminance,
            "lamps x light of one x shares / area", $"{count} x {flux} x {used} x {kept} / {w.Fine(area.Value, Measure.Area)}", Method,
            FigureInput.Of(number), FigureInput.Of(area));
        var (longer, shorter) = Sides(room);
        return new RoomLamps(room, light.Level, index, number, rows, each, (longer / each, shorter / rows), reached);
    }

    /// <summary>Rows along the longer side, as few as stand near enough.</summary>
    private static (int Rows, int Each) Layout(Room room, double lamps, double high)
    {
        var (longer, shorter) = Sides(room);
        double apart = MostSpacing * high * 1000;
        int needed = (int)Math.Ceiling(lamps - 1e-9);
        int rows = (int)Math.Clamp(Math.Round(shorter / apart), 1, Math.Max(1, needed));
        int each = Math.Max((int)Math.Ceiling(needed / (double)rows), (int)Math.Min(MostLamps, Math.Ceiling((longer / apart) - 0.25)));
        return (rows, Math.Max(1, each));
    }

    private static (double Longer, double Shorter) Sides(Room room)
    {
        var box = room.Floor.EnvelopeInternal;
        return (Math.Max(box.Width, box.Height), Math.Min(box.Width, box.Height));
    }
}
