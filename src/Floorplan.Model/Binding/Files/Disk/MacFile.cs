using System.Runtime.InteropServices;

namespace Floorplan.Model.Binding.Files.Disk;

/// <summary>Asks <c>stat</c> with 64-bit numbers of files. Places of its fields: sys/stat.h of macOS.</summary>
internal static class MacFile
{
    public static FileFacts? FactsOf(string path)
    {
        byte[] record = new byte[256];
        byte[] name = UnixFile.PathBytes(path);
        int failed = RuntimeInformation.ProcessArchitecture == Architecture.X64 ? Stat64(name, record) : Stat(name, record);
        return failed != 0 ? null : new FileFacts(
            UnixFile.IsPlain(BitConverter.ToUInt16(record, 4)), BitConverter.ToUInt16(record, 6), BitConverter.ToUInt32(record, 16),
            BitConverter.ToUInt32(record, 20), (BitConverter.ToUInt32(record, 0), BitConverter.ToUInt64(record, 8)));
    }

    [DllImport("libc", EntryPoint = "stat")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int Stat(byte[] path, [Out] byte[] record);

    [DllImport("libc", EntryPoint = "stat$INODE64")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int Stat64(byte[] path, [Out] byte[] record);
}
