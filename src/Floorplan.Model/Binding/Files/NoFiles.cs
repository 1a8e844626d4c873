using Floorplan.Language.Text;

namespace Floorplan.Model.Binding.Files;

/// <summary>For a plan that has no folder, such as one read from standard input: only the built-in parts can be used.</summary>
public sealed class NoFiles : IPlanFiles
{
    public PlanFile Read(SourceText from, string name)
        => new(
            null, "this plan has no folder to read other files from",
            "use the built-in parts only, such as `kinds from parts/fish`, or save the plan as a file");
}
