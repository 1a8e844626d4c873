using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Language.Diagnostics;
using Floorplan.Sizing.Staffing;

namespace Floorplan.Checks.Rules.Hygiene;

internal sealed class ToiletMissing : Rule
{
    public override string Name => "toilet-missing";

    public override RuleGroup Group => RuleGroup.Hygiene;

    public override string Says
        => "The plan counts a crew, and neither has a toilet room nor says that a toilet is elsewhere on the site. A plan without a crew "
            + "is not looked at.";

    public override string Why
        => "People go somewhere. Without a toilet near, and a basin beside it, they come back with unwashed hands or leave the line for "
            + "half an hour.";

    public override string Mend
        => "Add a room of class `toilet` that does not open on food, or say under `day` what the site has: `elsewhere 1 toilet`.";

    public override IReadOnlyList<Source> Sources { get; } =
        [HygieneSources.ToiletTable, HygieneSources.Lavatories, HygieneSources.AtLeastOneToilet];

    public override string Bad => """
        plan "Char unit"
          units metric
        shell shed 6000 x 3000 x 2500
        room gut "Gutting" dirty from west to east
          finish floor "resin, coved", walls "panel", ceiling "panel"
        door d1 gut to outside, south wall, 500 from west, 900 x 2050, swings out, closes itself
        day
          crew gut 2
          elsewhere changing room
        """;

    public override IReadOnlyList<LineChange> Mended => [new("elsewhere changing", "  elsewhere 1 toilet, changing room")];

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        int people = (int)context.Facts.Crew.All.Value;
        if (people == 0 || Welfare.Toilets(context.Plan) > 0)
        {
            yield break;
        }

        yield return CheckContext.Find(this, Severity.Warning, Crew.PlacesOf(context.Plan),
            $"no toilet is planned for the crew of {people}",
            "add a room of class `toilet`, or say under `day` what the site has, such as: elsewhere 1 toilet", context.Plan.Day!.Span) with
        { Limit = $"at least one toilet ({context.SourceOf(this).Text})", Figures = [context.Facts.Crew.All] };
    }
}
