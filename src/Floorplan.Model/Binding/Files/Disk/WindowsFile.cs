using System.Runtime.InteropServices;
using Microsoft.Win32.SafeHandles;

namespace Floorplan.Model.Binding.Files.Disk;

/// <summary>Asks the file's handle. Places of the fields: BY_HANDLE_FILE_INFORMATION in the Windows documentation.</summary>
internal static class WindowsFile
{
    private const uint OnDisk = 1;

    public static FileFacts? FactsOf(string path)
    {
        using var handle = File.OpenHandle(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
        byte[] record = new byte[52];
        if (GetFileInformationByHandle(handle, record) == 0)
        {
            return null;
        }

        uint Number(int at) => BitConverter.ToUInt32(record, at);
        return new FileFacts(
            GetFileType(handle) == OnDisk, Number(40), null, null, (Number(28), ((ulong)Number(44) << 32) | Number(48)));
    }

    [DllImport("kernel32")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.System32)]
    private static extern int GetFileInformationByHandle(SafeFileHandle handle, [Out] byte[] record);

    [DllImport("kernel32")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.System32)]
    private static extern uint GetFileType(SafeFileHandle handle);
}
