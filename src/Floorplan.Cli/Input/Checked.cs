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

    public static Checked Read(string name, Host host)
    {
        var input = PlanFileReader.Read(name, host);
        var files = new RecordedFiles(input.Files);
        var examination = input.Source is null ? null : Examination.Of(input.Source, files);
        return new Checked(input, examination) { Used = files.Read };
    }
}
