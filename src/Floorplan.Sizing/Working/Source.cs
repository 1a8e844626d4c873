using System.Text.RegularExpressions;
using Floorplan.Language.Diagnostics;
using Floorplan.Model;
using Floorplan.Model.Limits;

namespace Floorplan.Sizing.Working;

/// <summary>Where a figure or a rule comes from.</summary>
/// <param name="Title">Law, standard or handbook with clause and edition: <c>29 CFR 1910.36(g)(2), US CFR</c>.</param>
/// <param name="Confirmed">How we know: read in a public copy, common practice, from memory, own assumption.</param>
public sealed partial record Source(string Title, Origin Confirmed, Force Force = Force.Practice)
{
    /// <summary>Where and for whom it holds.</summary>
    public Scope Scope { get; init; } = Scope.Anywhere;

    /// <summary>
    /// The heaviest finding that a figure of this source may give: an error only for a law read in its own text and
    /// for what bodies were measured to bear, a note for guidance and
    /// for a figure still to be verified.
    /// </summary>
    public Severity Heaviest => (Confirmed, Force) switch
    {
        (Origin.FoundInPublicCopy, Force.Law or Force.Measured) => Severity.Error,
        (Origin.FromMemoryToVerify, _) or (_, Force.Guidance) => Severity.Note,
        _ => Severity.Warning,
    };

    /// <summary>
    /// For people: the title, and how we know where that is not a public copy:
    /// <c>9 CFR 416.2(b)(4), US CFR; from memory, not compared with the printed text</c>.
    /// </summary>
    public string Text
    {
        get
        {
            string how = Confirmed switch
            {
                Origin.FoundInPublicCopy => "",
                Origin.FoundInSecondaryCopy => "read in a reprint",
                Origin.CommonPractice => "common practice",
                Origin.FromMemory => "from memory, not compared with the printed text",
                Origin.FromMemoryToVerify => "from memory, to be verified",
                _ => "own assumption",
            };
            return how.Length == 0 || Title.Contains(how, StringComparison.OrdinalIgnoreCase) ? Title : Title + "; " + how;
        }
    }

    /// <summary>How it was read, in an inspector's words.</summary>
    public string Read => Confirmed switch
    {
        Origin.FoundInPublicCopy => "read in a public copy",
        Origin.FoundInSecondaryCopy => "read in a reprint, not compared with the printed text",
        Origin.CommonPractice => "common practice, no document",
        Origin.FromMemory => "from memory, not compared with the printed text",
        Origin.FromMemoryToVerify => "from memory, to be verified before use",
        _ => "own assumption, no document",
    };

    /// <summary>The years that its title names, or <c>not dated</c>.</summary>
    public string Edition => Year().Matches(Title) is { Count: > 0 } years
        ? string.Join(", ", years.Select(y => y.Value).Distinct())
        : "not dated";

    /// <summary>The same for these places, such as <c>us-wa</c>.</summary>
    public Source In(params string[] places) => this with { Scope = Scope with { Places = places } };

    /// <summary>The same for these trades.</summary>
    public Source For(params Trade[] trades) => this with { Scope = Scope with { Trades = trades } };

    /// <summary>The same for these plants of the United States.</summary>
    public Source Of(params PlantOf[] plants) => this with { Scope = Scope with { Plants = plants } };

    [GeneratedRegex(@"\b(?:19|20)\d\d\b(?!/)")]
    private static partial Regex Year();
}

/// <summary>How a figure is known; the letters are those of the reference tables.</summary>
public enum Origin
{
    /// <summary>F: read at a public address.</summary>
    FoundInPublicCopy,

    /// <summary>F2: read in a secondary, state-adopted or superseded copy.</summary>
    FoundInSecondaryCopy,

    CommonPractice,

    /// <summary>M.</summary>
    FromMemory,

    /// <summary>M?: verify against the text before relying on it.</summary>
    FromMemoryToVerify,

    OwnAssumption,
}

/// <summary>What kind of text a figure stands in.</summary>
public enum Force
{
    Law,

    /// <summary>Law only where it was adopted.</summary>
    ModelCode,

    /// <summary>Of a standards body; binding where a law or a contract names it.</summary>
    Standard,

    /// <summary>Advice of an authority: never more than a note.</summary>
    Guidance,

    /// <summary>What the trade does, or what we chose.</summary>
    Practice,

    /// <summary>Measured bodies, arithmetic, physics: holds everywhere.</summary>
    Measured,
}
