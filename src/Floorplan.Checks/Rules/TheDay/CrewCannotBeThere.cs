using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Language.Diagnostics;
using Floorplan.Language.Quantities;
using Floorplan.Model;

namespace Floorplan.Checks.Rules.TheDay;

internal sealed class CrewCannotBeThere : Rule
{
    public override string Name => "crew-cannot-be-there";

    public override RuleGroup Group => RuleGroup.TheDay;

    public override string Says => "The day counts more people in a room, or at a station, than have a place to stand at work there.";

    public override string Why =>
        "People without a place stand in the way of the others, and the count of the crew promises a pace that is not there.";

    public override string Mend => "Count fewer people, or give the stations more `workers`.";

    public override IReadOnlyList<Source> Sources { get; } = [DaySources.Sum];

    public override string Bad => DayExamples.Line("  work 12 s each", "  holds 5 shelves x 40 crates", crew: 3);

    public override IReadOnlyList<LineChange> Mended => [new("crew pack", "  crew pack 1")];

    public override bool AppliesTo(Plan plan) => plan.Day is { Crew.Count: > 0 };

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        var plan = context.Plan;
        foreach (var (place, people) in plan.Day!.Crew.OrderBy(c => c.Key, StringComparer.Ordinal))
        {
            var stations = plan.Stations.Where(s => s.Id == place || s.Room.Id == place && !plan.Day.Crew.ContainsKey(s.Id)).ToList();
            int standing = stations.Sum(s => s.Workers.Count);

            // One more carries; a room without a place to stand is one where people only come and go.
            if (standing == 0 || people <= standing + (stations.Exists(s => s.Id == place) ? 0 : 1))
            {
                continue;
            }

            yield return CheckContext.Find(
                this, Severity.Note, [place],
                $"{QuantityText.Count(people, "person", "people")} are counted at {place}, where "
                    + $"{QuantityText.Count(standing, "has", "have")} a place to stand at work",
                $"count {QuantityText.Plain(standing, 0)} at {place}, or give its stations more `workers`", plan.Day.Span) with
            {
                Measured = people,
                LimitValue = standing,
                Swap = DaySources.Crew(place, people, standing),
            };
        }
    }
}
