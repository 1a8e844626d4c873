using Floorplan.Sizing.Simulation.Line;
using Floorplan.Sizing.Simulation.Plans;
using Xunit;

namespace Floorplan.Tests.Sizing.Simulation;

/// <summary>What is written down of a run is what its sums are made of.</summary>
public sealed class LineRecordTests
{
    private readonly LineRecord record = new();
    private readonly LineOutcome outcome;

    public LineRecordTests() => outcome = PlannedDay.Run(new DayLine().Day().Planned.Line!, record: record);

    [Fact]
    public void Nobody_does_two_things_at_a_time() => Assert.All(
        record.People.GroupBy(s => s.Person),
        person =>
        {
            var spans = person.OrderBy(s => s.From).ToList();
            Assert.All(spans.Zip(spans.Skip(1)), two => Assert.True(two.First.Until <= two.Second.From, $"{two}"));
            Assert.All(spans.Zip(spans.Skip(1)), two => Assert.True(two.First.To == two.Second.At, $"{two}"));
        });

    [Fact]
    public void Spans_sum_up_to_what_each_person_did() => Assert.All(
        outcome.People.Index(),
        person =>
        {
            long Sum(params PersonDoes[] does)
                => record.People.Where(s => s.Person == person.Index && does.Contains(s.Does)).Sum(s => s.Until - s.From);
            Assert.Equal(person.Item.Working, Sum(PersonDoes.Work));
            Assert.Equal(person.Item.Carrying, Sum(PersonDoes.Carry, PersonDoes.BringBack));
            Assert.Equal(person.Item.Walking, Sum(PersonDoes.Walk));
            Assert.Equal(person.Item.Emptying, Sum(PersonDoes.Empty));
            Assert.Equal(person.Item.Washing, Sum(PersonDoes.Wash));
            Assert.True(person.Item.Working > 0 && person.Item.Washing > 0);
        });

    [Fact]
    public void Trips_carry_every_item_over_every_way() => Assert.All(
        outcome.Moves.Index(),
        move => Assert.Equal(move.Item.Items, record.Trips.Where(t => t.Move == move.Index).Sum(t => t.Items)));

    [Fact]
    public void Counts_of_steps_give_what_the_sums_give() => Assert.All(
        outcome.Steps.Index(),
        step =>
        {
            var counts = record.Steps.Where(c => c.Step == step.Index).ToList();
            var spans = counts.Zip(counts.Skip(1).Select(c => c.At).Append(outcome.End)).ToList();
            Assert.Equal(step.Item.WaitingTime, spans.Sum(s => (double)s.First.Waiting * (s.Second - s.First.At)));
            Assert.Equal(step.Item.GoingTime, spans.Sum(s => (double)s.First.Going * (s.Second - s.First.At)));
        });
}
