using Floorplan.Model.Details;
using Floorplan.Model.Flows;
using Floorplan.Model.Openings;
using Floorplan.Model.Rooms;
using Floorplan.Model.Services;
using Floorplan.Model.Shells;
using Floorplan.Model.Stations;

namespace Floorplan.Model.Space.Keeping;

/// <summary>
/// Whether two plans are the same to those who look at where things stand and how large they are. What is left out is named here: labels,
/// places in the text, and what is said of a thing beside its shape. All else counts, a property that is added later too: records are
/// compared whole, less what is left out.
/// </summary>
public static class PlanShape
{
    /// <summary>All that free floor, gaps, reach and ways out are made from.</summary>
    public static bool SameForStanding(Plan a, Plan b) =>
        a.Units == b.Units && a.Shell.Outside.EqualsExact(b.Shell.Outside) && SameThings(a, b);

    /// <summary>All that the routes of legs are made from besides.</summary>
    public static bool SameLegs(Plan a, Plan b) =>
        Same(a.Rails, b.Rails, SameRail)
        && Same(a.Flows, b.Flows, (f, g) => f.Stream == g.Stream && Same(f.Legs, g.Legs, SameLeg));

    /// <summary>All that bringing things in is made from.</summary>
    public static bool SameForCarryingIn(Plan a, Plan b) =>
        a.Units == b.Units && SameShell(a.Shell, b.Shell) && Same(a.Partitions, b.Partitions, Equals) && SameThings(a, b);

    private static bool SameThings(Plan a, Plan b) =>
        Same(a.Rooms, b.Rooms, SameRoom) && Same(a.Openings, b.Openings, SameOpening) && Same(a.Stations, b.Stations, SameStation);

    private static bool SameShell(Shell a, Shell b) =>
        Bare(a) == Bare(b) && a.Frame.SequenceEqual(b.Frame);

    private static Shell Bare(Shell shell) => shell with { Frame = [], Span = default };

    private static bool SameRoom(Room a, Room b) => Bare(a) == Bare(b);

    private static Room Bare(Room room) => room with { Label = "", Falls = null, Finishes = Nothing.Finishes, Span = default };

    private static bool SameOpening(Opening a, Opening b) =>
        a.RoomA?.Id == b.RoomA?.Id && a.RoomB?.Id == b.RoomB?.Id && Bare(a) == Bare(b) && SameSwing(a.Swing, b.Swing);

    private static Opening Bare(Opening opening) =>
        opening with { Label = "", FrameNote = "", RoomA = null, RoomB = null, Swing = null, Span = default };

    private static bool SameSwing(Swing? a, Swing? b) => a is null || b is null
        ? a == b
        : a.Into?.Id == b.Into?.Id && a.Leaves.SequenceEqual(b.Leaves)
            && a with { Into = null, Leaves = [] } == b with { Into = null, Leaves = [] };

    private static bool SameStation(Station a, Station b) =>
        a.Room.Id == b.Room.Id
        && Bare(a) == Bare(b)
        && a.Workers.SequenceEqual(b.Workers)
        && Same(a.Clears, b.Clears, (c, d) => c with { Span = default } == d with { Span = default });

    private static Station Bare(Station station) => station with
    {
        Label = "",
        Room = Nothing.Room,
        Workers = [],
        Clears = [],
        Said = SaidValues.None,
        Span = default,
    };

    private static bool SameRail(OverheadRail a, OverheadRail b) => Bare(a) == Bare(b) && a.Through.SequenceEqual(b.Through);

    private static OverheadRail Bare(OverheadRail rail) => rail with { Label = "", Through = [], Span = default };

    private static bool SameLeg(Leg a, Leg b) => SameStop(a.From, b.From) && SameStop(a.To, b.To)
        && a.Carriage == b.Carriage && a.Period == b.Period && a.Chain == b.Chain;

    private static bool SameStop(Stop a, Stop b) => a.GetType() == b.GetType() && a.Name == b.Name
        && (a is not ServiceStop s || b is not ServiceStop t || SamePoint(s.Service, t.Service));

    private static bool SamePoint(ServicePoint a, ServicePoint b) =>
        a.Room?.Id == b.Room?.Id && a.At == b.At && a.Wall == b.Wall && a.Height == b.Height;

    private static bool Same<T>(IReadOnlyList<T> a, IReadOnlyList<T> b, Func<T, T, bool> same)
    {
        if (a.Count != b.Count)
        {
            return false;
        }

        for (int i = 0; i < a.Count; i++)
        {
            if (!same(a[i], b[i]))
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>One object for all, since lists and dictionaries of records are equal only as objects.</summary>
    private static class Nothing
    {
        public static readonly IReadOnlyDictionary<string, string> Finishes = new Dictionary<string, string>();

        public static readonly Room Room = new()
        {
            Id = "",
            Label = "",
            Class = default,
            Floor = Shapes.Shape.Factory.CreatePolygon(),
            Bounds = default,
            CeilingHeight = default,
            WashedDown = false,
        };
    }
}
