using Floorplan.Language.Text;
using Floorplan.Model.Binding.Files;

namespace Floorplan.Cli.Input;

/// <summary>Keeps what a plan read from other files, since its drawing depends on them as well.</summary>
internal sealed class RecordedFiles(IPlanFiles files) : IPlanFiles
{
    private readonly List<SourceText> read = [];

    /// <summary>In the order of reading.</summary>
    public IReadOnlyList<SourceText> Read => read;

    /// <inheritdoc/>
    PlanFile IPlanFiles.Read(SourceText from, string name)
    {
        var file = files.Read(from, name);
        if (file.Source is { } source)
        {
            read.Add(source);
        }

        return file;
    }
}
