using Floorplan.Language.Diagnostics;
using Floorplan.Language.Text;

namespace Floorplan.Model.Binding.Files;

/// <summary>Files held in memory by their path from the plan's folder, for tests, editors and browsers.</summary>
public sealed class MemoryFiles(IReadOnlyDictionary<string, string> texts) : IPlanFiles
{
    public PlanFile Read(SourceText from, string name)
    {
        if (PlanPath.Problem(name) is { } problem)
        {
            return problem;
        }

        string path = PlanPath.WithExtension(PlanPath.Beside(from.Path, name));
        return texts.TryGetValue(path, out string? text)
            ? new PlanFile(new SourceText(text, path))
            : new PlanFile(null, $"there is no file `{path}`", NearNames.Hint(path, texts.Keys));
    }
}
