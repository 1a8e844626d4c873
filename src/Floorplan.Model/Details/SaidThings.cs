using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax.Statements;
using Floorplan.Language.Syntax.Statements.Services;
using Floorplan.Language.Text;
using Floorplan.Model.Details.Tables;

namespace Floorplan.Model.Details;

/// <summary>
/// What each statement of a plan says, by the table of its kind. A thing of the plan finds its own by the start of its span. A station's
/// is kept on the station, because the kinds that it takes from are folded in.
/// </summary>
public sealed class SaidThings
{
    /// <summary>How a detail is printed that is said by its words alone.</summary>
    public const string Yes = "yes";

    private readonly Dictionary<int, Func<UnitSystem, IEnumerable<ThingDetail>>> byStart = [];
    private readonly List<(string Keyword, SourceSpan Span)> spans = [];

    public static SaidThings None { get; } = new();

    internal static SaidThings Of(IEnumerable<Statement> statements)
    {
        var things = new SaidThings();
        foreach (var statement in statements)
        {
            switch (statement)
            {
                case PlanStatement s:
                    things.Add(s, HeadTable.All);
                    break;
                case ShellStatement s:
                    things.Add(s, ShellTable.All);
                    break;
                case RoomStatement s:
                    things.Add(s, RoomTable.All);
                    break;
                case PartitionsStatement s:
                    things.Add(s, PartitionsTable.All);
                    break;
                case OpeningStatement s:
                    things.Add(s, OpeningTable.All);
                    break;
                case RailStatement s:
                    things.Add(s, RailTable.All);
                    break;
                case ServiceStatement s:
                    things.Add(s, ServiceTable.All);
                    break;
                case DayStatement s:
                    things.Add(s, DayTable.All);
                    break;
                case SheetStatement s:
                    things.Add(s, SheetTable.All);
                    break;
                case AcceptStatement s:
                    things.Add(s, AcceptTable.All);
                    break;
            }
        }

        return things;
    }

    /// <summary>Where the statements of this first word stand, for those that make no thing of their own.</summary>
    internal IEnumerable<SourceSpan> SpansOf(string keyword) => spans.Where(s => s.Keyword == keyword).Select(s => s.Span);

    /// <summary>What is said at this place of the file, in the order of the table; nothing for things that no statement makes.</summary>
    public IEnumerable<ThingDetail> At(SourceSpan span, UnitSystem units) =>
        span.Source is not null && byStart.TryGetValue(span.Start, out var print) ? print(units) : [];

    private void Add<TStatement>(TStatement statement, IReadOnlyList<SaidRow<TStatement>> table)
        where TStatement : Statement
    {
        var values = SaidValues.Fold(table, [statement], 0);
        byStart.TryAdd(statement.HeadSpan.Start, units => values.PrintAll(table, units));
        spans.Add((statement.Keyword.Text, statement.HeadSpan));
    }
}
