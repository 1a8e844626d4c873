using System.Text;
using Floorplan.Cli.Input;
using Floorplan.Model.Binding.Files.Disk;

namespace Floorplan.Cli.Output.Files;

/// <summary>
/// Writes changed text back into the file that a plan was read from: only when it still holds what was read, and so that it stays the
/// same file, with its owner, permissions, other names and byte order mark. A link keeps pointing at what it points at.
/// </summary>
internal static class PlanRewrite
{
    private const string WasChanged
        = "another program changed it after it was read, so it is left as it is; run this again for the text that it has now";

    /// <returns>Null when written, else a sentence that says why not.</returns>
    public static string? Replace(PlanText read, string content)
    {
        StagedFile? staged = null;
        try
        {
            string target = File.ResolveLinkTarget(read.Path!, returnFinalTarget: true)?.FullName ?? read.Path!;
            if (IsProtected(target) || !MayWrite(target))
            {
                return "it is write-protected, so it is left as it is";
            }

            byte[] bytes = [.. read.HasMark ? Encoding.UTF8.Preamble : [], .. Encoding.UTF8.GetBytes(content)];
            staged = StagedFile.Beside(target, bytes, toDisk: true, onlyOwner: true);
            if (KeepsItsNamesAndOwner(target, staged))
            {
                return Move(staged, target, read.Bytes);
            }

            return WriteInPlace(staged, target, read.Bytes, bytes);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException or NotSupportedException)
        {
            staged?.Discard();
            return problem.Message;
        }
    }

    /// <summary>Nobody may write it. A superuser could all the same, but whoever took the right away meant it.</summary>
    private static bool IsProtected(string target) => OperatingSystem.IsWindows()
        ? File.GetAttributes(target).HasFlag(FileAttributes.ReadOnly)
        : (File.GetUnixFileMode(target) & (UnixFileMode.UserWrite | UnixFileMode.GroupWrite | UnixFileMode.OtherWrite)) == 0;

    /// <summary>A file that only its folder lets us replace is not ours to replace.</summary>
    private static bool MayWrite(string target)
    {
        try
        {
            using var handle = File.OpenHandle(target, FileMode.Open, FileAccess.Write, FileShare.ReadWrite | FileShare.Delete);
            return true;
        }
        catch (UnauthorizedAccessException)
        {
            return false;
        }
    }

    /// <summary>Whether the new file can take the old one's place: it has one name, and the new one can have its owner.</summary>
    private static bool KeepsItsNamesAndOwner(string target, StagedFile staged)
    {
        if (FileFacts.Of(target) is not { } old || FileFacts.Of(staged.Path) is not { } own)
        {
            return true;
        }

        return old.Names <= 1
            && ((old.Owner == own.Owner && old.Group == own.Group)
                || (old is { Owner: { } owner, Group: { } group } && FileFacts.TryGive(staged.Path, owner, group)));
    }

    private static string? Move(StagedFile staged, string target, byte[] before)
    {
        // As late as can be: between this look and the move lies no work of ours.
        if (!File.ReadAllBytes(target).AsSpan().SequenceEqual(before))
        {
            staged.Discard();
            return WasChanged;
        }

        if (OperatingSystem.IsWindows())
        {
            // It keeps who may do what with the file.
            File.Replace(staged.Path, target, null);
        }
        else
        {
            File.SetUnixFileMode(staged.Path, File.GetUnixFileMode(target));
            File.Move(staged.Path, target, overwrite: true);
        }

        return null;
    }

    /// <summary>
    /// A file with several names, or with an owner that we cannot give, is written where it is, since a new file would be another one.
    /// That cannot be whole or not at all. So the whole new text lies on the disk beside it first, which also shows that there is room
    /// for it, and stays there when the writing breaks off.
    /// </summary>
    private static string? WriteInPlace(StagedFile staged, string target, byte[] before, byte[] after)
    {
        using var stream = new FileStream(target, FileMode.Open, FileAccess.ReadWrite, FileShare.Read, bufferSize: 0);
        byte[] now = new byte[before.Length + 1];
        if (!now.AsSpan(0, stream.ReadAtLeast(now, now.Length, throwOnEndOfStream: false)).SequenceEqual(before))
        {
            staged.Discard();
            return WasChanged;
        }

        try
        {
            stream.Position = 0;
            stream.Write(after);
            stream.SetLength(after.Length);
            stream.Flush(flushToDisk: true);
        }
        catch (IOException problem)
        {
            return $"it was written in part only: {problem.Message}; the whole new text is in {staged.Path}";
        }

        staged.Discard();
        return null;
    }
}
