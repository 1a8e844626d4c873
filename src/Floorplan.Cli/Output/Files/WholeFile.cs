using System.Text;

namespace Floorplan.Cli.Output.Files;

/// <summary>Writes a file whole or not at all: beside its place first, then moved there. No link is followed.</summary>
internal static class WholeFile
{
    /// <summary>Replaces a file that is there, keeping its permissions.</summary>
    /// <returns>Null when written, else a sentence that says why not.</returns>
    public static string? Replace(string path, string content) => Replace(path, Bytes(content));

    /// <inheritdoc cref="Replace(string, string)"/>
    public static string? Replace(string path, byte[] content) => Write(path, content, overwrite: true);

    /// <summary>Refuses when something is there already.</summary>
    /// <returns>Null when written, else a sentence that says why not.</returns>
    public static string? Create(string path, string content) => Write(path, Bytes(content), overwrite: false);

    private static byte[] Bytes(string content) => new UTF8Encoding(false).GetBytes(content);

    private static string? Write(string path, byte[] content, bool overwrite)
    {
        StagedFile? staged = null;
        try
        {
            if (new FileInfo(path).LinkTarget is not null)
            {
                return "this is a link, and none is followed; take it away or choose another folder";
            }

            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            staged = StagedFile.Beside(path, content, toDisk: false);
            if (overwrite && !OperatingSystem.IsWindows() && File.Exists(path))
            {
                File.SetUnixFileMode(staged.Path, File.GetUnixFileMode(path));
            }

            File.Move(staged.Path, path, overwrite);
            return null;
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException or NotSupportedException)
        {
            staged?.Discard();
            return problem.Message;
        }
    }
}
