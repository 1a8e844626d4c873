namespace Floorplan.Cli.Output.Files;

/// <summary>A file written beside its place, under a name of its own, before it is moved there.</summary>
internal sealed record StagedFile(string Path)
{
    /// <param name="toDisk">
    /// Its bytes are on the disk and not only in memory when this returns, so that a power cut after the move leaves the whole file. The
    /// folder's own entry is the system's to write: .NET has no call for that.
    /// </param>
    /// <param name="onlyOwner">Nobody else may read it; else as any new file.</param>
    public static StagedFile Beside(string path, byte[] content, bool toDisk, bool onlyOwner = false)
    {
        string folder = System.IO.Path.GetDirectoryName(path)!;
        var staged = new StagedFile(System.IO.Path.Combine(folder, $".{System.IO.Path.GetRandomFileName()}.tmp"));
        var options = new FileStreamOptions { Mode = FileMode.CreateNew, Access = FileAccess.Write, BufferSize = 0 };
        if (onlyOwner && !OperatingSystem.IsWindows())
        {
            options.UnixCreateMode = UnixFileMode.UserRead | UnixFileMode.UserWrite;
        }

        try
        {
            using var stream = new FileStream(staged.Path, options);
            stream.Write(content);
            stream.Flush(toDisk);
            return staged;
        }
        catch
        {
            staged.Discard();
            throw;
        }
    }

    public void Discard()
    {
        try
        {
            File.Delete(Path);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            // What made it useless is the problem to report.
        }
    }
}
