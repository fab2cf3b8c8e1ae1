using System.Runtime.InteropServices;
using System.Text;

namespace ClassKit.UseCases.Output.Writing;

/// <summary>Swaps two files in one step, so that at no moment is either of them missing.</summary>
/// <remarks>
/// Linux has such a call (renameat2 with RENAME_EXCHANGE, since 3.15), most of its file systems support it, and .NET does not expose it.
/// </remarks>
internal static class Exchange
{
    private const int CurrentFolder = -100;
    private const uint Swap = 2;

    /// <summary>True if the two were swapped; false if nothing was done, because the system cannot.</summary>
    public static bool Try(string one, string other)
    {
        if (!OperatingSystem.IsLinux())
            return false;
        try
        {
            return RenameAt(CurrentFolder, Text(one), CurrentFolder, Text(other), Swap) == 0;
        }
        catch (Exception missing) when (missing is EntryPointNotFoundException or DllNotFoundException)
        {
            return false;
        }
    }

    private static byte[] Text(string path) => Encoding.UTF8.GetBytes(path + "\0");

    [DllImport("libc", EntryPoint = "renameat2")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int RenameAt(int fromFolder, byte[] from, int toFolder, byte[] to, uint flags);
}
