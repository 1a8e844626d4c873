using Floorplan.Cli.Hosting;

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

    /// <summary>Each finding with a proven change of the text, where a small one mends it.</summary>
    public Checked WithProposals() => this with { Examination = Examination?.WithProposals(Input.Files) };

    public static Checked Read(string name, Host host)
    {
        var input = PlanFileReader.Read(name, host);
        return new Checked(input, input.Source is null ? null : Examination.Of(input.Source, input.Files));
    }
}
