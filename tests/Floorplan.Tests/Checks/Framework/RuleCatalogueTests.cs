using System.Text.RegularExpressions;
using Floorplan.Checks.Framework;
using Floorplan.Language.Diagnostics;
using Floorplan.Sizing.Working;
using Xunit;

namespace Floorplan.Tests.Checks.Framework;

public sealed partial class RuleCatalogueTests
{
    public static TheoryData<string> Names => [.. RuleCatalogue.All.Select(r => r.Name)];

    [Fact]
    public void Every_rule_of_the_assembly_is_listed_once()
    {
        var written = typeof(Rule).Assembly.GetTypes().Where(t => t.IsSubclassOf(typeof(Rule)) && !t.IsAbstract).Select(t => t.FullName!)
            .Order(StringComparer.Ordinal);
        var listed = RuleCatalogue.All.Select(r => r.GetType().FullName!).Order(StringComparer.Ordinal);

        Assert.Equal(written, listed);
    }

    [Fact]
    public void Names_are_unique_and_found_again()
        => Assert.All(RuleCatalogue.All, r => Assert.Same(r, RuleCatalogue.Find(r.Name)));

    [Theory]
    [InlineData("no-air-gap", "air-gap-missing")]
    [InlineData("no-backflow-guard", "backflow-guard-missing")]
    [InlineData("no-changing-place", "changing-place-missing")]
    [InlineData("no-drain-near", "drain-too-far")]
    [InlineData("no-eyewash-near", "eyewash-too-far")]
    [InlineData("no-light", "light-missing")]
    [InlineData("no-sanitizer-near", "sterilizer-too-far")]
    [InlineData("no-water-near", "water-too-far")]
    [InlineData("no-way-out-for-waste", "way-out-for-waste-missing")]
    public void An_old_name_is_no_rule_and_leads_to_the_new_one(string old, string now)
    {
        Assert.Null(RuleCatalogue.Find(old));
        Assert.NotNull(RuleCatalogue.Find(now));
        Assert.Equal(now, RuleCatalogue.NewNameOf(old));
    }

    [Fact]
    public void An_unknown_name_finds_nothing() => Assert.Null(RuleCatalogue.Find("no-such-rule"));

    [Theory]
    [MemberData(nameof(Names))]
    public void A_rule_explains_itself(string name)
    {
        var rule = RuleCatalogue.Find(name)!;

        Assert.Matches(KebabCase(), rule.Name);
        Assert.NotEmpty(rule.Sources);
        Assert.All(rule.Sources, s => Assert.False(string.IsNullOrWhiteSpace(s.Title)));
        Assert.All(new[] { rule.Says, rule.Why, rule.Mend }, text => Assert.EndsWith(".", text));
        Assert.All(rule.FollowsFrom, cause => Assert.NotNull(RuleCatalogue.Find(cause.Rule)));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void A_rule_names_others_to_read_with_it_and_they_name_it(string name)
    {
        var rule = RuleCatalogue.Find(name)!;

        Assert.NotEmpty(RelatedRules.Of(rule));
        Assert.All(RelatedRules.Of(rule), r => Assert.Contains(rule, RelatedRules.Of(r)));
    }

    [Fact]
    public void Rules_to_read_together_are_rules()
        => Assert.All(RelatedRules.Matters.SelectMany(m => m), n => Assert.NotNull(RuleCatalogue.Find(n)));

    /// <summary>Only a law that was read in its own text may make an error of a figure.</summary>
    [Theory]
    [MemberData(nameof(Names))]
    public void No_figure_weighs_more_than_its_source(string name)
        => Assert.All(
            RuleCatalogue.Find(name)!.Limits, l => Assert.True(l.Severity <= l.Source.Heaviest, $"{l.Key}: {l.Severity}, {l.Source.Text}"));

    /// <summary>A figure cites a source that the rule page lists.</summary>
    [Theory]
    [MemberData(nameof(Names))]
    public void Every_figure_comes_from_a_listed_source(string name)
    {
        var rule = RuleCatalogue.Find(name)!;

        Assert.All(rule.Limits, l => Assert.Contains(l.Source, rule.Sources));
    }

    [Theory]
    [InlineData(Origin.FoundInPublicCopy, Force.Law, Severity.Error)]
    [InlineData(Origin.FoundInPublicCopy, Force.ModelCode, Severity.Warning)]
    [InlineData(Origin.FoundInPublicCopy, Force.Guidance, Severity.Note)]
    [InlineData(Origin.FoundInPublicCopy, Force.Standard, Severity.Warning)]
    [InlineData(Origin.FoundInSecondaryCopy, Force.Law, Severity.Warning)]
    [InlineData(Origin.FromMemory, Force.Law, Severity.Warning)]
    [InlineData(Origin.FromMemoryToVerify, Force.Law, Severity.Note)]
    [InlineData(Origin.CommonPractice, Force.Practice, Severity.Warning)]
    [InlineData(Origin.OwnAssumption, Force.Law, Severity.Warning)]
    public void A_source_bounds_the_weight_of_its_findings(Origin origin, Force force, Severity heaviest)
        => Assert.Equal(heaviest, new Source("A text", origin, force).Heaviest);

    [GeneratedRegex("^[a-z]+(-[a-z]+)*$")]
    private static partial Regex KebabCase();
}
