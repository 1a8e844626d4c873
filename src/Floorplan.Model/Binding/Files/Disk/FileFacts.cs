using System.Runtime.InteropServices;

namespace Floorplan.Model.Binding.Files.Disk;

/// <summary>
/// What .NET does not say about a file: whether it is a plain one, how many names it has, whose it is, and which file it is whatever
/// its name. A link is followed.
/// </summary>
/// <param name="Names">Hard links; 1 for a file that has one name only.</param>
/// <param name="Owner">Number of the owning user; null where files have none, as on Windows.</param>
/// <param name="Group">Number of the owning group, likewise.</param>
/// <param name="Identity">The same for every name of one file, and for no other file.</param>
public sealed record FileFacts(bool IsPlain, uint Names, uint? Owner, uint? Group, (ulong Volume, ulong Number) Identity)
{
    /// <summary>Null when there is no such file, or this system does not say.</summary>
    public static FileFacts? Of(string path)
    {
        try
        {
            return OperatingSystem.IsLinux() ? LinuxFile.FactsOf(path)
                : OperatingSystem.IsMacOS() ? MacFile.FactsOf(path)
                : OperatingSystem.IsWindows() ? WindowsFile.FactsOf(path)
                : null;
        }
        catch (Exception e) when (e is DllNotFoundException or EntryPointNotFoundException or IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }

    /// <summary>Gives a file another owner and group; false when this system or this user cannot.</summary>
    public static bool TryGive(string path, uint owner, uint group)
    {
        try
        {
            return !OperatingSystem.IsWindows() && ChangeOwner(UnixFile.PathBytes(path), owner, group) == 0;
        }
        catch (Exception e) when (e is DllNotFoundException or EntryPointNotFoundException)
        {
            return false;
        }
    }

    [DllImport("libc", EntryPoint = "chown")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int ChangeOwner(byte[] path, uint owner, uint group);
}
