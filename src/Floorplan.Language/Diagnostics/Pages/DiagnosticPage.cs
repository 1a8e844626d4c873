namespace Floorplan.Language.Diagnostics.Pages;

/// <summary>
/// What a code of a mistake means, for people who met it: <c>floorplan explain CODE</c> prints it. A test runs both examples.
/// </summary>
/// <param name="Code">As diagnostics carry it.</param>
/// <param name="Means">What the mistake is, and what it is good for to mend it.</param>
/// <param name="Wrong">Lines that give this code.</param>
/// <param name="Right">The same lines mended; they give no mistake at all.</param>
public sealed record DiagnosticPage(string Code, string Means, string Wrong, string Right)
{
    /// <summary>Lines that stand before both examples and are not shown, since they are nothing to look at.</summary>
    public string Around { get; init; } = "";

    /// <summary>The wrong text itself where it is too long to show; <see cref="Wrong"/> then shows its shape.</summary>
    public Func<string>? WrongInFull { get; init; }

    /// <summary>Files beside the example, by name, that its <c>kinds from</c> lines read.</summary>
    public IReadOnlyDictionary<string, string> Files { get; init; } = new Dictionary<string, string>();

    /// <summary>The same for the right example, where other files are what mends it.</summary>
    public IReadOnlyDictionary<string, string>? FilesMended { get; init; }
}
