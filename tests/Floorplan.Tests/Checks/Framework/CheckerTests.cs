using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Language.Diagnostics;
using Floorplan.Model.Limits;
using Floorplan.Sizing.Working;
using Floorplan.Tests.Checks.Support;
using Xunit;

namespace Floorplan.Tests.Checks.Framework;

public sealed class CheckerTests
{
    private const string Plain = """
        plan "Test shed"
          units metric
        shell shed 6000 x 3000 x 2500
        room one "One" clean from west to east
        door d1 one to outside, south wall, 500 from west, 900 x 2050, swings out
        """;

    [Fact]
    public void Heavy_findings_come_first_then_the_order_of_the_file_and_accepted_ones_last()
    {
        var plan = CheckedPlan.Plan(Plain);
        var door = plan.Openings[0].Span;
        var rule = new MadeUp("made-up", r =>
        [
            CheckContext.Find(r, Severity.Note, ["n"], "note", "mend", plan.Head.Span),
            CheckContext.Find(r, Severity.Error, ["late"], "late error", "mend", door),
            CheckContext.Find(r, Severity.Error, ["accepted"], "accepted error", "mend", plan.Head.Span),
            CheckContext.Find(r, Severity.Error, ["early"], "early error", "mend", plan.Head.Span),
            CheckContext.Find(r, Severity.Warning, ["w"], "warning", "mend", plan.Head.Span),
        ]);
        plan = plan with { Acceptances = [new Acceptance("made-up", ["accepted"], "agreed", "", plan.Head.Span)] };

        var found = Checker.Check(CheckedPlan.Facts(plan), [rule]);

        Assert.Equal(["early error", "late error", "warning", "note", "accepted error"], found.Select(f => f.Message));
        Assert.Equal("agreed", found[^1].AcceptedBy!.Reason);
    }

    [Fact]
    public void The_same_mistake_found_from_both_sides_is_reported_once_at_its_heaviest()
    {
        var plan = CheckedPlan.Plan(Plain);
        var rule = new MadeUp("made-up", r =>
        [
            CheckContext.Find(r, Severity.Warning, ["a", "b"], "a meets b", "mend", plan.Head.Span),
            CheckContext.Find(r, Severity.Error, ["b", "a"], "b meets a", "mend", plan.Head.Span),
        ]);

        var found = Assert.Single(Checker.Check(CheckedPlan.Facts(plan), [rule]));

        Assert.Equal(Severity.Error, found.Severity);
    }

    [Fact]
    public void A_finding_that_a_stronger_rule_explains_is_not_repeated()
    {
        var plan = CheckedPlan.Plan(Plain);
        var strong = new MadeUp("strong", r => [CheckContext.Find(r, Severity.Error, ["a", "b"], "strong", "mend", plan.Head.Span)]);
        var weak = new MadeUp("weak", r =>
        [
            CheckContext.Find(r, Severity.Error, ["a"], "explained", "mend", plan.Head.Span),
            CheckContext.Find(r, Severity.Error, ["c"], "its own", "mend", plan.Head.Span),
        ], "strong");

        var found = Checker.Check(CheckedPlan.Facts(plan), [weak, strong]);

        Assert.Equal(["its own", "strong"], found.Select(f => f.Message).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void What_follows_from_a_thing_in_the_wrong_place_is_not_told_unless_the_place_is_accepted()
    {
        const string beyond = Plain + """

            station bench "Bench" in one, 1200 x 600 x 900, 5200 from west, against north wall, worker south
            water w1 cold in one, west wall, centred
            """;
        var outside = Assert.Single(CheckedPlan.Check(beyond), f => f.Severity == Severity.Error);
        Assert.Equal("outside-shell", outside.Rule);
        Assert.DoesNotContain(CheckedPlan.Check(beyond), f => f.Rule == "nowhere-to-stand");

        Assert.Contains(
            CheckedPlan.Check(beyond + "\naccept outside-shell at bench \"hangs out of the hatch\""), f => f.Rule == "nowhere-to-stand");
    }

    [Fact]
    public void A_slip_inside_a_rule_is_not_hidden()
    {
        var plan = CheckedPlan.Plan(Plain);
        var rule = new MadeUp("made-up", _ => throw new InvalidOperationException("our bug"));

        Assert.Throws<InvalidOperationException>(() => Checker.Check(CheckedPlan.Facts(plan), [rule]));
    }

    [Fact]
    public void Two_checks_of_one_text_give_the_same_findings()
    {
        string text = Rules().First(r => r.Name == "waste-meets-product").Bad;

        Assert.Equal(Words(text), Words(text));

        static string[] Words(string text)
            => [.. CheckedPlan.Check(text).Select(f => $"{f.Severity} {f.Rule} {f.Span.Start} {f.Message} {f.Limit} {f.Mend}")];
        static IReadOnlyList<Rule> Rules() => RuleCatalogue.All;
    }

    private sealed class MadeUp(string name, Func<Rule, IEnumerable<Finding>> check, params string[] givesWayTo) : Rule
    {
        public override string Name => name;

        public override RuleGroup Group => RuleGroup.File;

        public override string Says => "Made up.";

        public override string Why => "For this test.";

        public override string Mend => "Nothing.";

        public override IReadOnlyList<Source> Sources { get; } = [new("Made up", Origin.OwnAssumption)];

        public override IReadOnlyList<Cause> FollowsFrom => [.. Cause.AtSameThings([.. givesWayTo])];

        public override string Bad => "";

        public override IReadOnlyList<LineChange> Mended => [];

        public override IEnumerable<Finding> Check(CheckContext context) => check(this);
    }
}
