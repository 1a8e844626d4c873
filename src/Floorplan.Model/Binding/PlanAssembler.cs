using Floorplan.Language.Quantities;
using Floorplan.Model.Binding.Drafts;
using Floorplan.Model.Binding.Placing;
using Floorplan.Model.Binding.Services;
using Floorplan.Model.Flows;
using Floorplan.Model.Limits;
using Floorplan.Model.Openings;
using Floorplan.Model.Rooms;
using Floorplan.Model.Stations;

namespace Floorplan.Model.Binding;

/// <summary>Resolves names, finds places and puts the plan together. What has a mistake is reported and left out; the rest stands.</summary>
internal sealed class PlanAssembler(PlanDraft draft, Reports reports)
{
    private readonly NameTable names = new(reports);
    private readonly List<(StationDraft Draft, Placeable Placed)> stations = [];
    private readonly List<(OpeningToPlace Opening, Placeable Placed)> openings = [];
    private readonly List<(ServiceDraft Draft, Placeable? Placed)> services = [];

    public Plan Assemble()
    {
        new NameGiving(names).Give(draft);
        var layout = new RoomLayout(draft.Shell.Finished, draft.PartitionThickness, names, reports);
        var laid = layout.Lay([.. Given(draft.Rooms, r => r.Shape.Id, r => r.Shape.Span).Select(r => r.Shape)]);

        var height = draft.PartitionHeight ?? draft.Shell.Shell.CeilingHeight;
        var walls = new WallFinder(draft.Shell, laid, draft.PartitionThickness);
        Gather(layout, walls);
        FindPlaces();

        var rooms = new RoomMaker(draft, names, reports).Make(laid);
        var madeOpenings = MakeOpenings(rooms, laid, walls);
        var madeStations = MakeStations(rooms);
        var madeServices = new ServicePlacer(rooms, names, reports).Place(services);
        var stops = new StopFinder(
            names,
            madeStations.ToDictionary(s => s.Id),
            madeOpenings.ToDictionary(o => o.Id),
            madeServices.ToDictionary(s => s.Id),
            rooms,
            reports);
        return new Plan
        {
            Source = draft.Source,
            Head = draft.Head,
            Shell = draft.Shell.Shell,
            Rooms = [.. laid.Select(r => rooms[r.Id])],
            Partitions = [.. PartitionLayout.Of(laid, draft.Shell.Finished, draft.PartitionThickness, height).Select(p => p with { BuiltOf = draft.PartitionBuild })],
            Openings = madeOpenings,
            Stations = madeStations,
            Rails = new RailMaker(names, rooms, reports).Make(draft.Rails),
            Services = madeServices,
            Flows = new FlowMaker(stops).Make(draft.Flows),
            Day = DayWithCrew(),
            Limits = draft.Limits,
            Acceptances = Accepted(madeOpenings),
            SheetWishes = draft.SheetWishes,
        };
    }

    // Of things that share a name only the first is kept.
    private IEnumerable<T> Given<T>(IEnumerable<T> drafts, Func<T, string> id, Func<T, Language.Text.SourceSpan> span)
        => drafts.Where(d => names.Find(id(d)) is { } named && named.Span == span(d));

    private void Gather(RoomLayout layout, WallFinder walls)
    {
        var opening = new OpeningWalls(names, layout, walls, reports);
        foreach (var item in Given(draft.Openings, o => o.Id, o => o.Span))
        {
            if (opening.Find(item) is { } found)
            {
                var placed = new Placeable { Id = item.Id, Room = found.Room, Place = item.Place, Span = item.Span, Wall = found.Wall };
                names.Find(item.Id)!.Placeable = placed;
                openings.Add((found, placed));
            }
        }

        layout.ReportGap(opening.OverGaps);

        foreach (var item in Given(draft.Stations, s => s.Id, s => s.Span))
        {
            if (RoomOf(item.Room, item.Id, item.Span) is { } room && HasSize(item))
            {
                var placed = new Placeable
                {
                    Id = item.Id,
                    Room = room,
                    Width = item.StandingWidth,
                    Depth = item.StandingDepth,
                    Place = item.Place,
                    Span = item.Span,
                };
                names.Find(item.Id)!.Placeable = placed;
                stations.Add((item, placed));
            }
        }

        foreach (var item in Given(draft.Services, s => s.Point.Id, s => s.Point.Span))
        {
            if (!item.HasPlace)
            {
                services.Add((item, null));
            }
            else if (RoomOf(item.Room, item.Point.Id, item.Point.Span) is { } room)
            {
                var placed = new Placeable { Id = item.Point.Id, Room = room, Place = item.Place, Span = item.Point.Span };
                names.Find(item.Point.Id)!.Placeable = placed;
                services.Add((item, placed));
            }
        }
    }

    private LaidRoom? RoomOf(NameRef? room, string id, Language.Text.SourceSpan span)
    {
        if (room is not { } name)
        {
            reports.Error("in-no-room", $"`{id}` is in no room", span, "add `in` and the name of a room");
            return null;
        }

        var named = names.Find(name.Id);
        if (named?.What != "room")
        {
            names.ReportUnknown(name.Id, "room", name.Span, n => n.What == "room");
        }

        return named?.Room;
    }

    private bool HasSize(StationDraft station)
    {
        if (station.Size is not { } size)
        {
            reports.Error("size-missing", $"the size of `{station.Id}` is not said", station.Span, $"add a line such as `size {reports.Example("1200 x 600 x 900", "48 x 24 x 36")}`, or take a kind that has one");
            return false;
        }

        if (size.Width <= Length.Zero || size.Depth <= Length.Zero || size.Height is { Nanometres: <= 0 })
        {
            reports.Error("size-not-positive", $"`{station.Id}` has a side of no length", station.Span, "give it a size above zero");
            return false;
        }

        return Fits(station, size.Width, size.Depth);
    }

    // Almost always a unit forgotten: told here, it does not come back as an overlap with everything in the plan.
    private bool Fits(StationDraft station, Length width, Length depth)
    {
        var shell = draft.Shell.Finished.Bounds;
        var (longer, shorter) = width > depth ? (width, depth) : (depth, width);
        var (length, breadth) = shell.Width > shell.Depth ? (shell.Width, shell.Depth) : (shell.Depth, shell.Width);
        if (longer <= length && shorter <= breadth)
        {
            return true;
        }

        reports.Error(
            "larger-than-shell",
            $"`{station.Id}` is {reports.Text(width)} x {reports.Text(depth)}, and the inside of the shell is {reports.Text(shell.Width)} x {reports.Text(shell.Depth)}",
            station.Span,
            $"check its size and the units: a bare number is {reports.Example("millimetres", "inches")} in this plan, and `{reports.Example("48 in", "1200 mm")}` says another unit");
        return false;
    }

    private void FindPlaces()
    {
        var references = new References(names, reports);
        var axes = new AxisChoice(names, reports);
        var along = new OpeningAxis(reports);
        List<Placeable> things = [.. openings.Select(o => o.Placed), .. stations.Select(s => s.Placed), .. services.Select(s => s.Placed).OfType<Placeable>()];
        foreach (var thing in things)
        {
            references.Check(thing);
            if (thing.Failed)
            {
                continue;
            }

            if (thing.Wall is null)
            {
                axes.Choose(thing);
            }
            else
            {
                along.Choose(thing);
            }
        }

        new Solver(names, draft.PartitionThickness, reports).Solve(things);
    }

    private List<Opening> MakeOpenings(IReadOnlyDictionary<string, Room> rooms, IReadOnlyList<LaidRoom> laid, WallFinder walls)
    {
        var maker = new OpeningMaker(rooms, reports);
        var made = openings.Select(o => maker.Make(o.Opening, o.Placed)).OfType<Opening>().ToList();
        if (names.Find(CargoDoors.Id) is null && CargoDoors.Of(draft.Shell, walls, laid, rooms, draft.Shell.Shell.Span) is { } doors)
        {
            made.Add(doors);
        }

        return made;
    }

    private List<Station> MakeStations(IReadOnlyDictionary<string, Room> rooms)
    {
        var made = new List<Station>();
        foreach (var (station, placed) in stations)
        {
            foreach (var waste in (station.Said.Get(StationTable.Wastes) ?? []).Where(w => w.BinId is not null && names.Find(w.BinId)?.What is not ("bin" or "station" or "store")))
            {
                names.ReportUnknown(waste.BinId!, "bin", waste.Span, n => n.What == "bin");
            }

            if (placed is { Failed: false, Box: { } box })
            {
                made.Add(StationMaker.Make(station, made.Count + 1, rooms[placed.Room.Id], box));
            }
        }

        return made;
    }

    private IReadOnlyList<Acceptance> Accepted(IReadOnlyList<Opening> made)
    {
        foreach (var (acceptance, things) in draft.Acceptances)
        {
            foreach (var thing in things.Where(t => !t.IsOutside && names.Find(t.Id) is null && made.All(o => o.Id != t.Id)))
            {
                reports.Error("unknown-name", $"there is nothing called `{thing.Id}` in this plan", thing.Span, reports.Near(thing.Id, names.All.Select(n => n.Id)));
            }
        }

        return [.. draft.Acceptances.Select(a => a.Acceptance)];
    }

    private Day? DayWithCrew()
    {
        if (draft.Day is not { } day)
        {
            return null;
        }

        var crew = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (var (who, people) in draft.Crew)
        {
            if (names.Find(who.Id)?.What is not ("room" or "station"))
            {
                names.ReportUnknown(who.Id, "room or station", who.Span, n => n.What is "room" or "station");
            }
            else
            {
                crew[who.Id] = crew.GetValueOrDefault(who.Id) + people;
            }
        }

        return day with { Crew = crew };
    }
}
