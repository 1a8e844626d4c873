using System.Text;
using Floorplan.Cli.Input;

namespace Floorplan.Cli.Output.Drawings;

/// <summary>Writes a file whole or not at all: beside its place first, then moved there.</summary>
internal static class WholeFile
{
    /// <summary>Replaces a file that is there, keeping its permissions; a link keeps pointing at what it points at.</summary>
    public static string? Replace(string path, string content) => Replace(path, Bytes(content));

    /// <inheritdoc cref="Replace(string, string)"/>
    public static string? Replace(string path, byte[] content) => Write(path, content, overwrite: true);

    /// <summary>Replaces the file that a plan was read from, with the byte order mark that it had.</summary>
    public static string? Replace(PlanText read, string content)
    {
        const string byteOrderMark = "\uFEFF";
        return Replace(read.Path!, read.HasMark ? byteOrderMark + content : content);
    }

    /// <summary>Refuses when something is there already.</summary>
    public static string? Create(string path, string content) => Write(path, Bytes(content), overwrite: false);

    private static byte[] Bytes(string content) => new UTF8Encoding(false).GetBytes(content);

    // Null when written, else a sentence that says why not.
    private static string? Write(string path, byte[] content, bool overwrite)
    {
        string? temporary = null;
        try
        {
            string target = File.Exists(path) ? File.ResolveLinkTarget(path, returnFinalTarget: true)?.FullName ?? path : path;
            string folder = Path.GetDirectoryName(target)!;
            Directory.CreateDirectory(folder);
            temporary = Path.Combine(folder, $".{Path.GetRandomFileName()}.tmp");
            File.WriteAllBytes(temporary, content);
            if (overwrite && !OperatingSystem.IsWindows() && File.Exists(target))
            {
                File.SetUnixFileMode(temporary, File.GetUnixFileMode(target));
            }

            File.Move(temporary, target, overwrite);
            return null;
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException or NotSupportedException)
        {
            Discard(temporary);
            return problem.Message;
        }
    }

    private static void Discard(string? temporary)
    {
        try
        {
            if (temporary is not null)
            {
                File.Delete(temporary);
            }
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            // The first problem is the one to report.
        }
    }
}
