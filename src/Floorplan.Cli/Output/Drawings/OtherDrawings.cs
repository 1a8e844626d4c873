namespace Floorplan.Cli.Output.Drawings;

/// <summary>Drawings in the folder that this run did not write, for the index: of another plan, or of this one in another format.</summary>
internal sealed record OtherDrawings(string Plan, string Title, IReadOnlyList<string> Files)
{
    /// <summary>Plans in order of name, and only files that are there.</summary>
    public static IReadOnlyList<OtherDrawings> Of(OutputFolder folder, IReadOnlyList<DrawnPlan> drawn)
    {
        var now = drawn.SelectMany(p => p.FileNames).ToHashSet();
        return [.. folder.Plans
            .Select(p => new OtherDrawings(p.Name, p.Title, [.. p.Files.Keys.Where(f => !now.Contains(f) && folder.Holds(f))]))
            .Where(o => o.Files.Count > 0)];
    }
}
