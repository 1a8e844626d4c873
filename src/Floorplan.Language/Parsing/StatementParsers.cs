using Floorplan.Language.Details.Services;
using Floorplan.Language.Parsing.Statements;
using Floorplan.Language.Parsing.Statements.Services;
using Floorplan.Language.Syntax.Statements.Services;
using Floorplan.Language.Words;

namespace Floorplan.Language.Parsing;

/// <summary>Every statement's first word, what it says, and who reads it, in the order that a plan is usually written.</summary>
internal static class StatementParsers
{
    private static readonly StationParser Station = new();
    private static readonly OpeningParser Opening = new();

    public static IReadOnlyList<Entry> All { get; } =
    [
        new("plan", "title, number, revisions, units, code, product and people", new PlanParser()),
        new("shell", "the container, trailer or shed that is built into", new ShellParser()),
        new("room", "a slice of the shell, or a rectangle in it, with its hygiene class", new RoomParser()),
        new("partitions", "the walls between rooms", new PartitionsParser()),
        new("door", "a door between two rooms, or to outside", Opening),
        new("hatch", "an opening for goods, above the floor", Opening),
        new("window", "a window", Opening),
        new("opening", "a plain hole in a wall", Opening),
        new("chute", "a hole that goods slide through", Opening),
        new("vent", "a hole for air", Opening),
        new("kind", "a station described once, for several to take", Station),
        new("kinds", "reads kinds from another file or from the parts shelf", new KindsFromParser()),
        new("station", "a bench, tank or machine", Station),
        new("store", "racks and shelves", Station),
        new("bin", "a bin for waste", Station),
        new("sink", "a sink for hands, washing up or mops", Station),
        new("rail", "an overhead rail", new RailParser()),
        new(
            "water", "a water point",
            new ServiceParser<WaterStatement>(k => new() { Keyword = k }, WaterDetails.All, WaterDetails.Rating, WaterDetails.Size)),
        new(
            "drain", "a floor drain, trench or sink waste",
            new ServiceParser<DrainStatement>(k => new() { Keyword = k }, DrainDetails.All, DrainDetails.Rating, DrainDetails.Size)),
        new(
            "hose", "a hose on a water point",
            new ServiceParser<HoseStatement>(
                k => new() { Keyword = k }, HoseDetails.All, HoseDetails.Rating, HoseDetails.Length, HoseDetails.On)),
        new(
            "hole", "a hole for a pipe, a cable or a fan",
            new ServiceParser<HoleStatement>(k => new() { Keyword = k }, HoleDetails.All, size: HoleDetails.Size)),
        new(
            "panel", "the electric panel",
            new ServiceParser<PanelStatement>(k => new() { Keyword = k }, PanelDetails.All, ElectricDetails.Rating)),
        new(
            "outlet", "an electric outlet",
            new ServiceParser<OutletStatement>(k => new() { Keyword = k }, OutletDetails.All, ElectricDetails.Rating)),
        new(
            "switch", "a switch on a wall",
            new ServiceParser<SwitchStatement>(k => new() { Keyword = k }, SwitchDetails.All, ElectricDetails.Rating)),
        new(
            "heater", "a water or room heater",
            new ServiceParser<HeaterStatement>(k => new() { Keyword = k }, HeaterDetails.All, HeaterDetails.Rating)),
        new("light", "the light level of rooms", new LightParser()),
        new("air", "where air comes in and goes out", new AirParser()),
        new("falls", "the slope of a room's floor and the drain that it runs to", new FallsParser()),
        new("flow", "the way of product, waste, people, supplies or returns", new FlowParser()),
        new("day", "the day's target, crew, breaks, rates and prices", new DayParser(), Use.Partly),
        new("limit", "sets one published limit for this plan, with the reason", new LimitParser()),
        new("accept", "accepts a finding at named things, with the reason", new AcceptParser()),
        new("sheet", "paper and scale of a sheet, where the default is not wanted", new SheetParser()),
    ];

    public static IReadOnlyList<string> Words { get; } = [.. All.Select(e => e.Word)];

    private static readonly Dictionary<string, IStatementParser> ByWord = All.ToDictionary(e => e.Word, e => e.Parser);

    public static IStatementParser? Find(string word) => ByWord.GetValueOrDefault(word);

    /// <summary>A statement that has this detail, a station before all others; null when none has.</summary>
    public static string? OwnerOf(string detail)
        => All.Where(e => e.Parser.Words(e.Word).Has(detail)).OrderByDescending(e => e.Word == "station").FirstOrDefault()?.Word;

    internal sealed record Entry(string Word, string Says, IStatementParser Parser, Use Use = Use.Used);
}
