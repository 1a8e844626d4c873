using Floorplan.Language.Quantities;
using Floorplan.Model.Rooms;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.LightAndAir.Lamps;

/// <summary>Lamps of one room by the lumen method: those that the plan says, or those that the level which it asks for needs.</summary>
/// <param name="Asked">The level that the plan says; null where it says lamps only.</param>
/// <param name="Count">Battens in <paramref name="Rows"/> rows of <paramref name="Each"/>.</param>
/// <param name="Spacing">Along a row and from row to row, mm; the first is half of it from the wall.</param>
/// <param name="Reached">The level with that many.</param>
/// <param name="Power">What they draw together, W.</param>
public sealed record RoomLamps(
    Room Room, Figure? Asked, Figure Index, Figure Count, int Rows, int Each, (double Along, double Across) Spacing, Figure Reached,
    Figure Power)
{
    private const double Lumens = 4000;

    /// <summary>lm/W.</summary>
    private const double Efficacy = 100;

    /// <summary>What the plan does not say.</summary>
    public const string Batten = "4000 lm and 40 W";

    /// <summary>The plan says them.</summary>
    public bool IsSaid => Room.Lamps is not null;

    /// <summary>Of one lamp, lm.</summary>
    public double Flux => Room.Lamps?.Flux.Base ?? Lumens;

    /// <summary>All of them, with their workings.</summary>
    public IReadOnlyList<Figure> Figures { get; private init; } = [];

    /// <summary>Where each stands in the middle of its part of the room, in plan mm, row after row.</summary>
    public IEnumerable<(double X, double Y)> Places
    {
        get
        {
            var box = Room.Floor.EnvelopeInternal;
            bool along = RunsEast;
            for (int row = 0; row < Rows; row++)
            {
                for (int i = 0; i < Each && (row * Each) + i < Count.Value; i++)
                {
                    double at = (i + 0.5) * Spacing.Along, over = (row + 0.5) * Spacing.Across;
                    yield return along ? (box.MinX + at, box.MinY + over) : (box.MinX + over, box.MinY + at);
                }
            }
        }
    }

    /// <summary>Rows run from west to east, along the longer side.</summary>
    public bool RunsEast => Room.Floor.EnvelopeInternal is var box && box.Width >= box.Height;

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
    private static readonly Source UsualPower = new("100 lm/W with its gear; own assumption", Origin.OwnAssumption);
    private static readonly Source Sum = new("sum of the lamps", Origin.CommonPractice);

    /// <summary>By the id of the room: rooms that say lamps, and rooms that say a level that lamps can give.</summary>
    public static IReadOnlyDictionary<string, RoomLamps> Of(PlanFacts facts)
    {
        var asked = RoomLight.Said(facts.Plan);
        var found = new Dictionary<string, RoomLamps>(StringComparer.Ordinal);
        foreach (var room in facts.Plan.Rooms.Where(r => r.Lamps is not null || asked.ContainsKey(r.Id)))
        {
            if (!found.ContainsKey(room.Id) && Of(facts, room, asked.GetValueOrDefault(room.Id)?.Level) is { } lamps)
            {
                found[room.Id] = lamps;
            }
        }

        return found;
    }

    /// <summary>Null where the level is no lamp's.</summary>
    private static RoomLamps? Of(PlanFacts facts, Room room, Figure? level)
    {
        var w = new Workings(facts.Plan.Units);
        double lumens = room.Lamps?.Flux.Base ?? Lumens;
        var area = facts.RoomSizes[room.Id].Area;
        double high = Math.Max(LeastHigh, room.CeilingHeight.Metres - Hangs - Work);
        double round = room.Floor.ExteriorRing.Length / 1000;
        if ((level is null ? room.Lamps is null : level.Value <= 0) || lumens <= 0 || area.Value <= 0 || round <= 0)
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
        double lamps = level is null ? room.Lamps!.Count : LumenMethod.Lamps(level.Value, area.Value, lumens, factor, Kept);
        if (lamps > MostLamps)
        {
            return null;
        }

        var (rows, each) = room.Lamps is { } there ? Layout(room, there.Count) : Layout(room, lamps, high);
        string flux = w.Text(lumens, Measure.LuminousFlux);
        string used = QuantityText.Plain(factor, 3);
        string kept = QuantityText.Plain(Kept);
        int count = room.Lamps?.Count ?? rows * each;
        var of = room.Lamps is null
            ? FigureInput.Taken("light of one", flux, BattenSource) : FigureInput.Said("light of one", flux, room.Span);
        FigureInput[] shares =
            [FigureInput.Taken("share that reaches the work", used, Table), FigureInput.Taken("what dirt and age leave", kept,
                Maintenance)];
        var number = level is null
            ? w.Of(
                "lamps", room.Id, count, QuantityKind.Count, QuantityText.Count(count, "lamp"), "as said", QuantityText.Plain(count), Own,
                FigureInput.Said("lamps", QuantityText.Plain(count), room.Span))
            : w.Of(
                "lamps", room.Id, count, QuantityKind.Count, QuantityText.Count(count, "lamp"),
                "level x area / (light of one x share that reaches the work x what dirt and age leave), "
                    + (room.Lamps is null ? "rounded up to whole rows" : "needed; beside it what the plan says"),
                $"{level.Text} x {w.Fine(area.Value, Measure.Area)} / ({flux} x {used} x {kept}) = {QuantityText.Plain(lamps)}", Method,
                [
                    FigureInput.Of(level), FigureInput.Of(area), FigureInput.Of(index), of, .. shares,
                    .. room.Lamps is null
                        ? Array.Empty<FigureInput>() : [FigureInput.Said("lamps", QuantityText.Plain(count), room.Span)]]);
        var reached = w.Of(
            "light reached", room.Id, LumenMethod.Lux(count, area.Value, lumens, factor, Kept), Measure.Illuminance,
            "lamps x light of one x share that reaches the work x what dirt and age leave / area",
            $"{count} x {flux} x {used} x {kept} / {w.Fine(area.Value, Measure.Area)}", Method,
            [FigureInput.Of(number), FigureInput.Of(area), FigureInput.Of(index), of, .. shares]);
        double watts = room.Lamps?.Power?.Base ?? lumens / Efficacy;
        var power = w.Of(
            "lamps draw", room.Id, Math.Max(0, watts) * count, Measure.Power, "lamps x what one draws",
            $"{count} x {w.Text(watts, Measure.Power)}", Sum, FigureInput.Of(number),
            room.Lamps?.Power is null
                ? FigureInput.Taken("what one draws", w.Text(watts, Measure.Power), UsualPower)
                : FigureInput.Said("what one draws", w.Text(watts, Measure.Power), room.Span));
        var (longer, shorter) = Sides(room);
        return new RoomLamps(room, level, index, number, rows, each, (longer / each, shorter / rows), reached, power)
        {
            Figures = w.Figures,
        };
    }

    /// <summary>So many lamps in rows about as far apart as the lamps of a row.</summary>
    private static (int Rows, int Each) Layout(Room room, int count)
    {
        var (longer, shorter) = Sides(room);
        int rows = (int)Math.Clamp(Math.Round(Math.Sqrt(count * shorter / longer)), 1, count);
        return (rows, (int)Math.Ceiling(count / (double)rows));
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
