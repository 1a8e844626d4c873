namespace Floorplan.Cli.Output.Drawings;

/// <summary>What this run of the program wrote into its folder, so that a file that would be the same is not written again.</summary>
internal sealed class WrittenFiles
{
    private readonly Dictionary<string, (byte[] Content, DateTime Saved)> files = [];

    /// <summary>Whether the file there is the one that was written, with this content; a file that somebody else saved is not.</summary>
    public bool Holds(string path, byte[] content) =>
        files.TryGetValue(path, out var known)
        && known.Content.AsSpan().SequenceEqual(content)
        && new FileInfo(path) is { Exists: true } file
        && file.Length == content.Length
        && file.LastWriteTimeUtc == known.Saved;

    public void Add(string path, byte[] content) => files[path] = (content, File.GetLastWriteTimeUtc(path));
}
