namespace Floorplan.Cli.Output.Drawings;

/// <summary>What the list of a folder knows of one plan.</summary>
/// <param name="Name">That its files begin with.</param>
/// <param name="Title">Empty when it has none.</param>
/// <param name="Files">Names in order, and the hash of what each was drawn from.</param>
internal sealed record ListedPlan(string Name, string Title, SortedDictionary<string, string> Files)
{
    /// <summary>Files of holes for a cutting table begin so.</summary>
    private const string CutOuts = "-cut-outs-";

    /// <summary>
    /// What a run leaves out of date. A run that draws all takes away what it would write but for the plan's change, and what was
    /// drawn from another text. One that draws some sheets takes away cutting files of another text only, since steel is cut from them.
    /// </summary>
    /// <param name="written">Names that this run writes.</param>
    /// <param name="hash">Of what it draws from.</param>
    /// <param name="formats">What it writes all sheets in; null when it draws some sheets only.</param>
    public IReadOnlyList<string> Stale(IReadOnlySet<string> written, string hash, IReadOnlyCollection<DrawFormat>? formats)
        => [.. Files.Where(f => !written.Contains(f.Key)
            && (formats is null ? f.Value != hash && IsCutOuts(f.Key) : f.Value != hash || IsOf(f.Key, formats))).Select(f => f.Key)];

    private bool IsCutOuts(string file)
        => file.StartsWith(Name + CutOuts, StringComparison.Ordinal) && file.EndsWith(".dxf", StringComparison.Ordinal);

    private static bool IsOf(string file, IReadOnlyCollection<DrawFormat> formats)
        => !Enum.TryParse<DrawFormat>(Path.GetExtension(file).AsSpan(1), ignoreCase: true, out var format) || formats.Contains(format);
}
