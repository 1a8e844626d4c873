using Floorplan.Language.Quantities;
using Floorplan.Model.Flows;
using Floorplan.Model.Openings;
using Floorplan.Model.Rooms;
using Floorplan.Model.Stations;
using Floorplan.Sizing.Working;
using Stream = Floorplan.Model.Flows.Stream;

namespace Floorplan.Sizing.Cold.Loads;

/// <summary>Warm air through each opening of a cold room.</summary>
internal sealed class DoorLoads(PlanFacts facts, Room room, Workings w)
{
    /// <summary>Seconds of one passage; ASHRAE has 15 to 25.</summary>
    private const double ClosesItself = 15;
    private const double ByHand = 25;

    /// <summary>A strip curtain holds back so much.</summary>
    private const double Strips = 0.9;

    /// <summary>Where the day cannot be run, and the fewest, for somebody looks in.</summary>
    private const int UsualPassages = 30;
    private const int FewestPassages = 4;

    /// <summary>Minutes that a door to outside stands open to load the day's work out.</summary>
    private const double LoadingOut = 15;

    private static readonly Source Gosney = new(
        "Gosney and Olama 1975, ASHRAE Refrigeration 2006 chapter 13", Origin.FoundInSecondaryCopy);
    private static readonly Source OpenTime = new("ASHRAE Refrigeration: (passages x time + open time) / 24 h", Origin.FromMemory);
    private static readonly Source Passage = new("ASHRAE Refrigeration: 15 to 25 s for each passage", Origin.FromMemory);
    private static readonly Source Own = new("own assumption", Origin.OwnAssumption);
    private static readonly Source Flow = new("ASHRAE Refrigeration: 0.8 over 11 K, 1.1 below; strips 0.9", Origin.FoundInSecondaryCopy);

    private readonly DesignAir inside = DesignAir.In(facts.Plan, room);

    /// <param name="day">Null where the day cannot be run.</param>
    public IEnumerable<ColdLoad> All(RoomDay? day) => facts.Plan.Openings
        .Where(o => o.RoomA?.Id == room.Id != (o.RoomB?.Id == room.Id) && o.Kind is not (OpeningKind.Window or OpeningKind.Vent))
        .DistinctBy(o => o.Id).Select(o => Of(o, day));

    private ColdLoad Of(Opening opening, RoomDay? day)
    {
        var beyond = DesignAir.In(facts.Plan, opening.RoomA?.Id == room.Id ? opening.RoomB : opening.RoomA);
        double open = Doorway.WhileOpen(opening.Width.Metres, opening.Height.Metres, beyond.Pair, inside.Pair);
        string size = $"{WorkingText.Long(opening.Width.Millimetres, w.Units)} x {WorkingText.Long(opening.Height.Millimetres, w.Units)}";
        var whileOpen = w.Of(
            $"heat through {opening.Id} while it is open", room.Id, open, Measure.Heat,
            "0.221 A (hi - hr) ρr (1 - ρi/ρr)^½ (g H)^½ Fm in kW, m, kJ/kg and kg/m³; i air outside, r of the room;"
                + " nothing where i is colder",
            Numbers(opening, beyond), Gosney, FigureInput.Said("opening", size, opening.Span), beyond.Temperature, beyond.Damp,
            inside.Temperature, inside.Damp);
        var share = Share(opening, day);
        double factor = Doorway.FlowFactor(beyond.Celsius - inside.Celsius);
        double kept = opening.Swing?.Kind == SwingKind.Strip ? 1 - Strips : 1;
        string factors = QuantityText.Plain(factor) + (kept < 1 ? " x " + QuantityText.Plain(kept) : "");
        var heat = w.Of(
            $"heat through {opening.Id}", room.Id, open * share.Value * factor * kept, Measure.Heat,
            "heat while open x share of the day x how much of the flow gets going" + (kept < 1 ? " x what the strips let through" : ""),
            $"{whileOpen.Text} x {share.Text} x {factors}", Gosney, FigureInput.Of(whileOpen), FigureInput.Of(share),
            FigureInput.Taken("how much of the flow gets going", factors, Flow));
        return new ColdLoad(
            $"{opening.Kind.ToString().ToLowerInvariant()} {opening.Id}".Replace("cargodoor", "doors", StringComparison.Ordinal),
            $"open {share.Text} of the day", w.Text(Math.Max(0, beyond.Celsius - inside.Celsius), Measure.TemperatureDifference), heat);
    }

    /// <summary>In SI units, as the equation is published.</summary>
    private string Numbers(Opening opening, DesignAir beyond)
    {
        var (hot, light) = Doorway.Air(beyond.Pair);
        var (cool, heavy) = Doorway.Air(inside.Pair);
        string width = QuantityText.Plain(opening.Width.Metres, 3);
        string height = QuantityText.Plain(opening.Height.Metres, 3);
        return $"0.221 x {width} x {height} x ({QuantityText.Plain(hot)} - {QuantityText.Plain(cool)}) x {QuantityText.Plain(heavy, 4)}"
            + $" x (1 - {QuantityText.Plain(light, 4)} / {QuantityText.Plain(heavy, 4)})^½ x (9.807 x {height})^½"
            + $" x {QuantityText.Plain(Doorway.Factor(light, heavy), 3)}";
    }

    private Figure Share(Opening opening, RoomDay? day)
    {
        if (opening.Kind == OpeningKind.Opening && opening.Swing is null)
        {
            return w.Of(
                $"share of the day that {opening.Id} is open", room.Id, 1, Measure.Ratio, "always open", "1", OpenTime,
                FigureInput.Said("opening", "without a door", opening.Span));
        }

        int trips = day?.Trips.GetValueOrDefault(opening.Id) ?? 0;
        int passages = day is null ? UsualPassages : Math.Max(FewestPassages, 2 * trips);
        double each = opening.ClosesItself || opening.Kind is OpeningKind.Hatch or OpeningKind.Chute ? ClosesItself : ByHand;
        double stands = IsLoadedOut(opening) ? LoadingOut : 0;
        string count = FormattableString.Invariant($"{passages}");
        FigureInput[] inputs =
        [
            day is not null && trips * 2 >= FewestPassages
                ? FigureInput.Said("passages in a day", count, facts.Plan.Day?.Span ?? opening.Span)
                : FigureInput.Taken("passages in a day", count, Own),
            FigureInput.Taken("time for each", QuantityText.Time(each), Passage),
            .. stands > 0 ? [FigureInput.Taken("open for loading out", QuantityText.Time(stands * 60), Own)] : Array.Empty<FigureInput>(),
        ];
        return w.Of(
            $"share of the day that {opening.Id} is open", room.Id, Doorway.OpenShare(passages, each, stands), Measure.Ratio,
            "(passages x time for each + open time) / 24 h",
            $"({count} x {QuantityText.Time(each)} + {QuantityText.Time(stands * 60)}) / 24 h", OpenTime, inputs);
    }

    /// <summary>Product leaves from a station of the room through it to outside.</summary>
    private bool IsLoadedOut(Opening opening) => (opening.RoomA is null || opening.RoomB is null) && facts.Plan.Flows
        .Where(f => f.Stream == Stream.Product).SelectMany(f => f.Legs)
        .Any(l => l.From is StationStop { Station: { Role: StationRole.Store } from } && from.Room.Id == room.Id
            && l.To is OpeningStop to && to.Opening.Id == opening.Id);
}
