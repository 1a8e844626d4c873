using Floorplan.Language.Text;
using Floorplan.Model.Binding.Files;

namespace Floorplan.Cli.Input;

/// <summary>What reading one input gave: its text, or a sentence that says why there is none.</summary>
/// <param name="Name">As reports name it.</param>
/// <param name="Path">Full path; null for standard input.</param>
/// <param name="Bytes">As they were read, so that nothing is written over a later edit.</param>
/// <param name="HasMark">It starts with a UTF-8 byte order mark, which is not part of the text but is kept when it is written back.</param>
internal sealed record PlanText(string Name, string? Path, SourceText? Source, byte[] Bytes, bool HasMark, string? Problem)
{
    /// <summary>For names of output files.</summary>
    public string BaseName => Path is null ? "plan" : System.IO.Path.GetFileNameWithoutExtension(Path);

    /// <summary>What the plan's <c>kinds from</c> statements may read.</summary>
    public IPlanFiles Files => Path is null ? new NoFiles() : new PlanFiles(System.IO.Path.GetDirectoryName(Path)!);
}
