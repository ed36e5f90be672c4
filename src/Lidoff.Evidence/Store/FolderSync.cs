using System.Runtime.InteropServices;

namespace Lidoff.Evidence.Store;

/// <summary>Syncs a folder, which the base library cannot: a rename is only safe once the folder that holds the name has reached the disk.</summary>
internal static partial class FolderSync
{
    // fcntl.h of Linux on x64: O_RDONLY | O_DIRECTORY | O_CLOEXEC.
    private const int ReadFolder = 0 | 0x10000 | 0x80000;

    public static void Run(string folder)
    {
        var handle = Open(folder, ReadFolder);
        if (handle < 0) throw Failure(folder);
        try
        {
            if (Sync(handle) != 0) throw Failure(folder);
        }
        finally
        {
            _ = Close(handle);
        }
    }

    private static IOException Failure(string folder)
    {
        var code = Marshal.GetLastPInvokeError();
        return new IOException($"{folder} could not be synced (error {code}).", code);
    }

    [LibraryImport("libc", EntryPoint = "open", SetLastError = true, StringMarshalling = StringMarshalling.Utf8)]
    private static partial int Open(string path, int flags);

    [LibraryImport("libc", EntryPoint = "fsync", SetLastError = true)]
    private static partial int Sync(int handle);

    [LibraryImport("libc", EntryPoint = "close", SetLastError = true)]
    private static partial int Close(int handle);
}
