using System.Globalization;
using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Checks.Limits;
using Floorplan.Language.Diagnostics;
using Floorplan.Sizing.Staffing;

namespace Floorplan.Checks.Rules.Hygiene;

internal sealed class ToiletsTooFew : Rule
{
    private const string One = "people that one toilet serves";

    /// <summary>How many people 1, 2, 3 … toilets serve; each more serves 40 more (Table J-1).</summary>
    private static readonly int[] Served = [15, 35, 55, 80, 110, 150];

    private const int EachMore = 40;

    /// <summary>By ASR A4.1 one set does for at most 9 people, who use it by turns; it gives no table for more here.</summary>
    private const int MostOfOneSet = 9;

    private static readonly Source OneSet = new Source(
        "ASR A4.1, Germany, section 4(6): one set of toilet and basin, used by turns, for at most 9 people; a toilet within 50 m, 100 m at "
            + "most (section 5.2)", Origin.FoundInSecondaryCopy, Force.Guidance).In("de");

    public override string Name => "toilets-too-few";

    public override RuleGroup Group => RuleGroup.Hygiene;

    public override string Says
        => "The crew that the plan counts is more than its toilets serve, those elsewhere on the site counted in. A figure set by "
            + "`limit` holds for each toilet.";

    public override string Why => "Where people queue they do without washing their hands.";

    public override string Mend => "Add a toilet, or say under `day` which ones are elsewhere on the site.";

    public override IReadOnlyList<Source> Sources { get; } = [HygieneSources.ToiletTable, Welfare.ApprovedCode, OneSet];

    // A warning, though it is law: mobile crews with toilets near are left out of it, and so are rooms that no two people use at once.
    public override IReadOnlyList<RuleLimit> Limits =>
    [
        new(One, Served[0], LimitUnit.Count, Sources[0], Severity.Warning),
        new(One, Welfare.UpTo[0], LimitUnit.Count, Sources[1], Severity.Note),
        new(One, MostOfOneSet, LimitUnit.Count, Sources[2], Severity.Note),
    ];

    public override string Bad => """
        plan "Large pack shed"
          units metric
          code us
        shell shed 20000 x 8000 x 2700
        room pack "Packing" dry from west to east
        door d1 pack to outside, south wall, 500 from west, 1000 x 2050, swings out, closes itself, opens from inside
        door d2 pack to outside, south wall, 500 from east, 1000 x 2050, swings out, closes itself, opens from inside
        day
          crew pack 16
          elsewhere 1 toilet, changing room
        """;

    public override IReadOnlyList<LineChange> Mended => [new("elsewhere 1", "  elsewhere 2 toilets, changing room")];

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        int people = (int)context.Facts.Crew.All.Value;
        int toilets = Welfare.Toilets(context.Plan);
        if (people == 0 || toilets == 0 || context.Limit(this) is not { } limit)
        {
            yield break;
        }

        double served = limit.SetBy is null ? Table(limit.Published.Source, toilets) : limit.Value * toilets;
        if (people > served)
        {
            string count = toilets == 1 ? "1 toilet" : $"{toilets} toilets";
            yield return CheckContext.Find(this, limit, people, Crew.PlacesOf(context.Plan),
                $"the crew of {people} has {count}, enough for {served.ToString("0", CultureInfo.InvariantCulture)}",
                "add a room of class `toilet`, or say under `day` which ones are elsewhere on the site", context.Plan.Day!.Span) with
            {
                Figures = [context.Facts.Crew.All],
                LimitValue = served,
                Limit = limit.SetBy is null
                    ? $"limit {served.ToString("0", CultureInfo.InvariantCulture)} people for {count} ({limit.Published.Source.Text})"
                    : limit.Text,
            };
        }
    }

    /// <summary>Germany gives a figure for a single one alone.</summary>
    private static double Table(Source source, int toilets) => source == OneSet
        ? toilets == 1 ? MostOfOneSet : double.PositiveInfinity
        : source == Welfare.ApprovedCode ? Welfare.ServedBy(toilets) : ServedBy(toilets);

    private static int ServedBy(int toilets)
        => toilets <= Served.Length ? Served[toilets - 1] : Served[^1] + (EachMore * (toilets - Served.Length));
}
