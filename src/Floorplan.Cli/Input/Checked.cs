using Floorplan.Cli.Hosting;
using Floorplan.Language.Text;

namespace Floorplan.Cli.Input;

/// <summary>One input of a command line and what came of it; without an examination it could not be read.</summary>
internal sealed record Checked(PlanText Input, Examination? Examination)
{
    public int ExitCode => Examination switch
    {
        null => Hosting.ExitCode.CouldNotRun,
        { HasErrors: true } => Hosting.ExitCode.Errors,
        _ => Hosting.ExitCode.Fine,
    };

    /// <summary>Other files that were read for it, in the order of reading.</summary>
    public IReadOnlyList<SourceText> Used { get; init; } = [];

    /// <summary>Each finding with a proven change of the text, where a small one mends it.</summary>
    public Checked WithProposals() => this with { Examination = Examination?.WithProposals(Input.Files) };

    /// <summary>Full paths of <see cref="Used"/>, which are named from the folder of the plan.</summary>
    public IEnumerable<string> UsedPaths =>
        Input.Path is { } path ? Used.Select(u => Path.GetFullPath(u.Path, Path.GetDirectoryName(path)!)) : [];

    /// <param name="kept">What came of the file before; null works everything out.</param>
    public static Checked Read(string name, Host host, KeptPlan? kept = null)
    {
        var input = PlanFileReader.Read(name, host);
        var files = new RecordedFiles(input.Files);
        var examination = input.Source is null ? null : Examination.Of(input.Source, files, kept);
        return new Checked(input, examination) { Used = files.Read };
    }
}
