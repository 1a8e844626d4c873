using System.Text;

namespace Floorplan.Model.Binding.Files.Disk;

/// <summary>What Linux and macOS have in common.</summary>
internal static class UnixFile
{
    private const int KindBits = 0xF000;

    private const int Plain = 0x8000;

    /// <summary>From the mode of POSIX <c>stat</c>: S_IFMT and S_IFREG.</summary>
    public static bool IsPlain(ushort mode) => (mode & KindBits) == Plain;

    /// <summary>As C reads it: UTF-8 and a zero.</summary>
    public static byte[] PathBytes(string path) => [.. Encoding.UTF8.GetBytes(path), 0];
}
