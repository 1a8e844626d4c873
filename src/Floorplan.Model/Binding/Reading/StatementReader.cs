using Floorplan.Language.Syntax.Statements;
using Floorplan.Model.Binding.Drafts;
using Floorplan.Model.Binding.Services;
using Floorplan.Model.Limits;
using Floorplan.Model.Shapes;

namespace Floorplan.Model.Binding.Reading;

/// <summary>Adds one statement after another to a draft, up to a bound.</summary>
internal sealed class StatementReader(PlanDraft draft, KindTable kinds, Reports reports)
{
    private readonly RoomReader rooms = new(reports);
    private readonly OpeningReader openings = new(reports);
    private readonly StationReader stations = new(kinds);
    private int things;
    private readonly RunningTotal legs = new(PlanBounds.MostLegs);

    public void Read(Statement statement)
    {
        if (statement is KindsFromStatement or PlanStatement or ShellStatement or PartitionsStatement or DayStatement
            or StationStatement { Keyword.Text: "kind" } || !IsWithinBounds(statement))
        {
            return;
        }

        switch (statement)
        {
            case RoomStatement s:
                Add(draft.Rooms, rooms.Read(s));
                break;
            case OpeningStatement s:
                Add(draft.Openings, openings.Read(s));
                break;
            case StationStatement s:
                Add(draft.Stations, stations.Read(s));
                break;
            case FlowStatement s when HasLegsWithinBounds(s):
                Add(draft.Flows, FlowReader.Read(s));
                break;
            case FlowStatement:
                break;
            case RailStatement { Name: not null, Height: not null, Path.Count: > 0 } s:
                draft.Rails.Add(RailOf(s));
                break;
            case FallsStatement { Name: { } room, Slope: { } slope } s:
                draft.Falls.Add(
                    new FallsDraft(new NameRef(room.Text, room.Span), slope.Value.Base, s.To is { } to
                        ? new NameRef(to.Text, to.Span)
                        : null, s.HeadSpan));
                break;
            case LimitStatement { Name: { } rule } s:
                draft.Limits.Add(new LimitOverride(rule.Text, s.Length?.Value, s.Quantity?.Value, s.Reason?.Text ?? "", s.HeadSpan));
                break;
            case AcceptStatement { Name: { } rule } s:
                draft.Acceptances.Add((
                    new Acceptance(rule.Text, [.. s.At.Select(a => a.Text)], s.Reason?.Text ?? "", s.By?.Text ?? "", s.HeadSpan),
                    [.. s.At.Select(a => new NameRef(a.Text, a.Span))]));
                break;
            case SheetStatement s:
                draft.SheetWishes.Add(
                    new SheetWish((int)Math.Clamp(s.Number?.Value ?? 0, 0, ushort.MaxValue), s.Paper?.Text, s.Scale is { } scale
                        ? (double)scale.Value
                        : null, s.HeadSpan));
                break;
            default:
                draft.Services.AddRange(ServiceMakers.Read(statement));
                break;
        }
    }

    private bool IsWithinBounds(Statement statement)
    {
        things++;
        bool tooManyRooms = statement is RoomStatement && draft.Rooms.Count >= PlanBounds.MostRooms;
        if (things <= PlanBounds.MostThings && !tooManyRooms)
        {
            return true;
        }

        if (things == PlanBounds.MostThings + 1
            || (tooManyRooms && draft.Rooms.Count == PlanBounds.MostRooms && !reports.All.Any(d => d.Code == "too-many-rooms")))
        {
            reports.Error(
                tooManyRooms ? "too-many-rooms" : "too-many-things",
                tooManyRooms
                    ? $"a plan has at most {PlanBounds.MostRooms} rooms"
                    : $"a plan has at most {PlanBounds.MostThings} statements",
                statement.HeadSpan,
                "split the plan into several files");
        }

        return false;
    }

    private bool HasLegsWithinBounds(FlowStatement flow) => legs.Add(
        flow.Chains.Sum(c => Math.Max(0, c.Stops.Count - 1)),
        () => reports.Error(
            "too-many-legs", $"the flows of a plan have at most {PlanBounds.MostLegs} legs", flow.HeadSpan,
            "write each way once, not each time that it is gone"));

    private static RailDraft RailOf(RailStatement s) => new(
        s.Name!.Text,
        s.Label?.Text ?? "",
        s.Room is { } room ? new NameRef(room.Text, room.Span) : null,
        [.. s.Path.Select(p => new PlanPoint(p.X.Value, p.Y.Value))],
        s.Height!.Value,
        s.Pitch?.Value,
        [.. s.Through.Select(t => new NameRef(t.Text, t.Span))],
        s.HeadSpan);

    private static void Add<T>(List<T> list, T? item)
        where T : class
    {
        if (item is not null)
        {
            list.Add(item);
        }
    }
}
