using System.Text.RegularExpressions;
using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Language.Diagnostics;
using Floorplan.Model;
using Floorplan.Tests.Architecture;
using Floorplan.Tests.Checks.Support;
using Xunit;

namespace Floorplan.Tests.Checks.Properties;

/// <summary>
/// Every template under every code: what is found where is approved in <c>codes.txt</c>, and no template has an error anywhere.
/// </summary>
public sealed partial class CodeMatrixTests
{
    private static readonly string[] Codes = ["us", "eu", "none"];

    private static string ApprovedFile => Repository.At("tests", "Floorplan.Tests", "Checks", "Properties", "codes.txt");

    [Fact]
    public void Each_template_under_each_code_finds_what_was_approved()
    {
        var found = Templates().SelectMany(t => Codes.Select(c => Line(t, c))).ToList();
        if (Environment.GetEnvironmentVariable("FLOORPLAN_APPROVE") == "codes")
        {
            File.WriteAllText(ApprovedFile, string.Join('\n', found) + "\n");
        }

        Assert.Equal(File.ReadAllLines(ApprovedFile), found);
    }

    [Fact]
    public void No_template_has_an_error_under_any_code() => Assert.All(
        Templates().SelectMany(t => Codes.Select(c => (Template: t, Code: c))),
        p => Assert.DoesNotContain(Check(p.Template, p.Code), f => f.Severity == Severity.Error && f.AcceptedBy is null));

    /// <summary>A figure of one country's law never measures a plan of another.</summary>
    [Fact]
    public void The_limit_of_every_finding_belongs_to_the_code() => Assert.All(
        Templates()
            .SelectMany(
                t => Codes.SelectMany(c => Check(t, c).Where(f => f.LimitValue is not null)
                    .Select(f => (Code: Enum.Parse<CodeChoice>(c, ignoreCase: true), Finding: f)))),
        p => Assert.Contains(RuleCatalogue.Find(p.Finding.Rule)!.Limits, l => l.AppliesUnder(p.Code)
            && p.Finding.Limit.Contains(l.Source.Text.Split(',')[0].Split(':')[0], StringComparison.Ordinal)));

    private static string Line(string template, string code)
    {
        var counted = Check(template, code).GroupBy(f => $"{f.SeverityWord} {f.Rule}").OrderBy(g => g.Key, StringComparer.Ordinal)
            .Select(g => $"{g.Count()} {g.Key}").ToList();
        return $"{template} {code}: {(counted.Count == 0 ? "nothing" : string.Join(", ", counted))}";
    }

    private static IReadOnlyList<Finding> Check(string template, string code)
    {
        string text = File.ReadAllText(Repository.At("templates", template + ".unit"));
        Assert.Single(Code().Matches(text));
        string changed = Code().Replace(text, "${before}" + code);
        return CheckedPlan.Check(changed == text ? text : Place().Replace(changed, ""));
    }

    private static IEnumerable<string> Templates()
        => Directory.EnumerateFiles(Repository.At("templates"), "*.unit").Select(f => Path.GetFileNameWithoutExtension(f)!)
            .Order(StringComparer.Ordinal);

    /// <summary>A country, and whose plant it is, are of one code.</summary>
    [GeneratedRegex(@"^  (?:country|plant) +.*\n", RegexOptions.Multiline)]
    private static partial Regex Place();

    [GeneratedRegex(@"(?<before>^  code +)(us|eu|none)\b", RegexOptions.Multiline)]
    private static partial Regex Code();
}
