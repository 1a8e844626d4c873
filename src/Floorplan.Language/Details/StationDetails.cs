using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax.Statements;
using Floorplan.Language.Syntax.Values;
using Floorplan.Language.Words;

namespace Floorplan.Language.Details;

/// <summary>What a station, store, bin, sink or kind may say.</summary>
public static class StationDetails
{
    private static readonly string[] Placed = ["station", "store", "bin", "sink"];

    private static readonly QuantityKind[] Goods = [QuantityKind.Count, QuantityKind.Mass, QuantityKind.Volume];

    public static Detail<NameSyntax> Room { get; } = new(
        "in",
        "the room that it stands in",
        ["in filleting", "in receiving"],
        Forms.Room)
    { Of = Placed, Needed = Needed.ToldByBinder };

    public static Detail<SizeSyntax> Size { get; } = new(
        "size",
        "along, across and height, or with `round` the diameter and the height",
        ["size 1400 x 610 x 920", "size 1350 x 600 x 910", "round 905 x 850"],
        c => StationReading.IsWord(c.Before, "round") ? c.RoundSize() : c.Size("a length along the station", 2, 3))
    {
        Forms = ["size", "round"],
        Needed = Needed.ToldByBinder,
    };

    public static Detail<PlaceTerm> Place { get; } = new(
        "place",
        "where it stands in its room, each way once",
        ["place against south wall, 110 from east", "place 700 from south, 120 from east"],
        Parsing.PlaceParser.Term)
    {
        BareRepeats = true,
        Of = Placed,
        Needed = Needed.ToldByBinder,
    };

    public static Detail<NumberSyntax> Turned { get; } = new(
        "turned",
        "quarter turns clockwise: 90, 180 or 270 degrees",
        ["turned 90", "turned 270"],
        StationReading.Turned);

    public static Detail<WorkersSyntax> Workers { get; } = new(
        "workers",
        "how many people stand at it, on which side and how far apart",
        ["workers 2 north, 810 apart", "workers 2 north, 790 apart", "workers 3 north", "worker south"],
        StationReading.Workers)
    {
        Forms = ["workers", "worker"],
        Repeatable = true,
    };

    public static Detail<WorkSyntax> Work { get; } = new(
        "work",
        "the time that one piece takes, how much that differs, and whether the work is precise, light, heavy or cutting",
        [
            "work 24 s each, heavy", "work 26 s each, heavy", "work 26 s each, spread 20 %, heavy", "work 26 s each, spread 25 %, heavy",
            "work 26 s each", "work cutting",
        ],
        StationReading.Work)
    {
        Repeatable = true,
        Clashes = (a, b) => (a.Each is not null && b.Each is not null) || (a.Kind is not null && b.Kind is not null),
    };

    public static Detail<PauseSyntax> Pause { get; } = new(
        "pause",
        "how long hands stop after so many pieces, to change or sharpen a knife",
        ["pause 22 s every 26 fish", "pause 24 s every 26 fish", "pause 24 s every 31 fish"],
        StationReading.Pause);

    public static Detail<ReworkSyntax> Rework { get; } = new(
        "rework",
        "what share of the pieces is worked on a second time, and at which earlier station they begin again",
        ["rework 4 %", "rework 6 %", "rework 6 % at gutting"],
        StationReading.Rework);

    public static Detail<LengthSyntax> WorkHeight { get; } = Forms.Length(
        "work height",
        "the height that hands work at, where it is not the top",
        "the height that hands work at",
        "work height 955", "work height 985");

    public static Detail<QuantitySyntax> Batch { get; } = Count(
        "batch", "how much is worked on at once", "how many make a batch", "batch 41 fish", "batch 37 kg");

    public static Detail<QuantitySyntax> Cycle { get; } = Time(
        "cycle", "how long a batch takes", "how long a batch takes", Use.Used, "cycle 21 min", "cycle 23 min");

    public static Detail<QuantitySyntax> Stays { get; } = Time(
        "stays", "how long the product stays in it", "how long the product stays", Use.Used, "stays 31 min", "stays 2 h");

    public static Detail<QuantitySyntax> Holds { get; } = new(
        "holds",
        "how much it holds",
        ["holds 83 fish", "holds 5 shelves x 120 fish", "holds 410 L"],
        StationReading.Holds);

    public static Detail<QuantitySyntax> Waits { get; } = Count(
        "waits", "how much finds room to wait until it is worked on", "how much can wait", "waits 9 fish", "waits 11 fish");

    public static Detail<ForProductSyntax> ForProduct { get; } = new(
        "for",
        "what differs here for another product of the plan",
        [
            "for turkeys work 91 s each batch 3 cycle 61 s", "for turkeys work 96 s each batch 3 cycle 61 s",
            "for turkeys work 96 s each batch 4 cycle 61 s", "for turkeys stays 3 h holds 21 waits 5",
        ],
        StationReading.ForProduct)
    {
        Repeatable = true,
        Clashes = (a, b) => a.Product.Text.Equals(b.Product.Text, StringComparison.OrdinalIgnoreCase),
    };

    public static Detail<IReadOnlyList<NeedSyntax>> Needs { get; } = new(
        "needs",
        "the water, drain, power, air, ice, steam or sterilizer that it needs",
        [
            "needs cold 8 L/min, hot 4 L/min at 61 C, drain", "needs cold 9 L/min, hot 4 L/min at 61 C, drain", "needs cold 9 L/min, drain",
            "needs power 230 V 1.5 kW single-phase", "needs power 230 V 1.5 kW three-phase", "needs power 400 V 1.5 kW three-phase",
            "needs ice 20 kg/h, air 10 cfm at 6 bar, steam, sterilizer",
        ],
        StationReading.Needs)
    {
        Repeatable = true,
    };

    public static Detail<ClearSyntax> Clear { get; } = new(
        "clear",
        "a side to be kept free, how deep and what for",
        ["clear south 915 \"crate trolley\"", "clear south 935 \"crate trolley\"", "clear south 935 \"pallets\"", "clear west 720"],
        StationReading.Clear)
    {
        Repeatable = true,
    };

    public static Detail<WeightSyntax> Weight { get; } = new(
        "weight",
        "what it weighs empty and full",
        ["weight 62 kg empty, 93 kg full", "weight 64 kg empty, 93 kg full", "weight 64 kg empty, 97 kg full"],
        StationReading.Weight);

    public static Detail<WasteSyntax> Waste { get; } = new(
        "waste",
        "the waste of one piece, and the bin that it goes to",
        ["waste 0.12 kg each to offal-bin", "waste 0.14 kg each to offal-bin", "waste 0.14 kg each", "waste to offal-bin"],
        StationReading.Waste)
    {
        Repeatable = true,
    };

    public static Detail<TextSyntax> Cost { get; } =
        new(
            "cost", "what it costs: the first figure counts, or `400 to 600`", ["cost \"455 used\"", "cost \"905 new\""],
            c => c.Words("a cost"));

    public static Detail<WordSyntax> Hung { get; } =
        new(
            "hung",
            "it hangs from the ceiling or a wall, and the floor below is free",
            ["hung"],
            c => new WordSyntax("hung", c.Before))
        { RunsOn = true };

    public static Detail<LengthSyntax> Underside { get; } = Forms.Length(
        "underside", "the height of the underside of what hangs", "the height of the underside", "underside 1905", "underside 1955");

    public static Detail<WordSyntax> OnWheels { get; } = Forms.Mark("on wheels", "it may be rolled away");

    public static Detail<LengthSyntax> AirGap { get; } = Forms.Length(
        "air gap",
        "from the end of the tap down to the rim of what it fills",
        "the gap between the inlet and the rim",
        "air gap 52",
        "air gap 57");

    public static Detail<LengthSyntax> Inlet { get; } = Forms.Length(
        "inlet", "the diameter of the end of that tap", "the diameter of the inlet", "inlet 21", "inlet 26");

    public static Detail<TextSyntax> Circuit { get; } = Forms.Text(
        "circuit", "the number of the circuit that its power comes from", "the number of a circuit", "circuit 4", "circuit 7");

    public static Detail<QuantitySyntax> Volume { get; } = new(
        "volume", "the volume of a bin or tank", ["volume 405 L", "volume 65 L"], c => c.Quantity("a volume", QuantityKind.Volume));

    /// <summary>In the order of the guide.</summary>
    public static IReadOnlyList<Detail> All { get; } =
    [
        Size, Place, Turned, Workers, Work, Pause, Rework, WorkHeight, Batch, Cycle, Stays, Holds, Waits, ForProduct, Needs, Clear, Waste,
        Weight, Cost, Hung, Underside, OnWheels, AirGap, Inlet, Circuit, Volume,
    ];

    private static Detail<QuantitySyntax> Count(string word, string says, string what, params string[] examples) =>
        new(word, says, examples, c => c.Quantity(what, Goods));

    private static Detail<QuantitySyntax> Time(string word, string says, string what, Use use, params string[] examples) =>
        new(word, says, examples, c => c.Quantity(what, QuantityKind.Time)) { Use = use };
}
