using System.Collections.Frozen;
using Floorplan.Language.Parsing.Statements;

namespace Floorplan.Language.Parsing;

/// <summary>Every statement's first word and who reads it.</summary>
internal static class StatementParsers
{
    private static readonly StationParser Station = new();
    private static readonly OpeningParser Opening = new();
    private static readonly ServiceParser Service = new();
    private static readonly RoomServiceParser RoomService = new();

    private static readonly FrozenDictionary<string, IStatementParser> ByWord = new Dictionary<string, IStatementParser>
    {
        ["plan"] = new PlanParser(),
        ["shell"] = new ShellParser(),
        ["room"] = new RoomParser(),
        ["partitions"] = new PartitionsParser(),
        ["door"] = Opening,
        ["hatch"] = Opening,
        ["window"] = Opening,
        ["opening"] = Opening,
        ["chute"] = Opening,
        ["vent"] = Opening,
        ["kind"] = Station,
        ["use"] = new UseParser(),
        ["station"] = Station,
        ["store"] = Station,
        ["bin"] = Station,
        ["sink"] = Station,
        ["rail"] = new RailParser(),
        ["water"] = Service,
        ["drain"] = Service,
        ["hose"] = Service,
        ["panel"] = Service,
        ["outlet"] = Service,
        ["switch"] = Service,
        ["heater"] = Service,
        ["light"] = RoomService,
        ["air"] = RoomService,
        ["falls"] = new FallsParser(),
        ["flow"] = new FlowParser(),
        ["day"] = new DayParser(),
        ["limit"] = new LimitParser(),
        ["accept"] = new AcceptParser(),
        ["sheet"] = new SheetParser(),
    }.ToFrozenDictionary();

    /// <summary>In the order that a plan is usually written.</summary>
    public static IReadOnlyList<string> Words { get; } =
    [
        "plan", "shell", "room", "partitions", "door", "hatch", "window", "opening", "chute", "vent", "kind", "use", "station", "store", "bin", "sink",
        "rail", "water", "drain", "hose", "panel", "outlet", "switch", "heater", "light", "air", "falls", "flow", "day", "limit", "accept", "sheet",
    ];

    public static IStatementParser? Find(string word) => ByWord.GetValueOrDefault(word);

    /// <summary>The first statement that has this detail, or null.</summary>
    public static string? OwnerOf(string detail) => Words.FirstOrDefault(w => ByWord[w].DetailWords.Contains(detail));
}
