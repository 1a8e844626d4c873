namespace Floorplan.Sizing.Working;

/// <summary>Where a figure or a rule comes from.</summary>
/// <param name="Title">Law, standard or handbook with clause and edition: <c>29 CFR 1910.36(g)(2), US CFR</c>.</param>
/// <param name="Confirmed">How we know: read in a public copy, common practice, from memory, own assumption.</param>
public sealed record Source(string Title, Origin Confirmed, Force Force = Force.Guidance)
{
    /// <summary>
    /// The heaviest finding that a figure of this source may give: an error only for a law read in its own text, a note for a figure
    /// still to be verified.
    /// </summary>
    public Language.Diagnostics.Severity Heaviest => (Confirmed, Force) switch
    {
        (Origin.FoundInPublicCopy, Force.Law) => Language.Diagnostics.Severity.Error,
        (Origin.FromMemoryToVerify, _) => Language.Diagnostics.Severity.Note,
        _ => Language.Diagnostics.Severity.Warning,
    };

    /// <summary>
    /// For people: the title, and how we know where that is not a public copy: <c>9 CFR 416.2(b)(4), US CFR; from memory</c>.
    /// </summary>
    public string Text
    {
        get
        {
            string how = Confirmed switch
            {
                Origin.FoundInPublicCopy => "",
                Origin.FoundInSecondaryCopy => "seen in a secondary copy",
                Origin.CommonPractice => "common practice",
                Origin.FromMemory => "from memory",
                Origin.FromMemoryToVerify => "from memory, to be verified",
                _ => "own assumption",
            };
            return how.Length == 0 || Title.Contains(how, StringComparison.OrdinalIgnoreCase) ? Title : Title + "; " + how;
        }
    }
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

public enum Force
{
    Law,
    ModelCode,
    Guidance,
}
