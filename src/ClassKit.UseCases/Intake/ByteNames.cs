using System.Runtime.InteropServices;
using System.Text;
using Microsoft.Win32.SafeHandles;

namespace ClassKit.UseCases.Intake;

/// <summary>
/// Folders and files by the bytes of their names: Linux allows any, .NET reads them as UTF-8 and cannot open again what is none.
/// </summary>
/// <remarks>
/// Other systems have names in Unicode only. The layout of an entry is that of 64-bit Linux, the same for all its processors (readdir(3)).
/// </remarks>
internal static class ByteNames
{
    private const char Lost = '\uFFFD';
    private const int LengthAt = 16;
    private const int KindAt = 18;
    private const int NameAt = 19;
    private const int Forbidden = 13; // EACCES
    private const int CloseOnRun = 0x80000; // O_CLOEXEC

    /// <summary>True if a name that .NET gave may not be the name that the system has.</summary>
    public static bool MayBeLost(string name) =>
        name.Contains(Lost, StringComparison.Ordinal) && OperatingSystem.IsLinux() && Environment.Is64BitProcess;

    /// <summary>The bytes of a path that is text.</summary>
    public static byte[] Of(string path) => Encoding.UTF8.GetBytes(path);

    /// <summary>Everything that lies in a folder, in the order of its bytes.</summary>
    /// <exception cref="IOException">It cannot be looked into.</exception>
    public static IReadOnlyList<ByteNamed> In(byte[] folder)
    {
        var open = OpenFolder(Ended(folder));
        if (open == 0)
            throw Failure();
        try
        {
            var found = new List<ByteNamed>();
            while (Next(open) is not 0 and var entry)
            {
                var name = NameOf(entry);
                if (!name.SequenceEqual("."u8) && !name.SequenceEqual(".."u8))
                    found.Add(ByteNamed.Of(folder, name, KindOf(Marshal.ReadByte(entry, KindAt))));
            }
            found.Sort((one, other) => one.Path.AsSpan().SequenceCompareTo(other.Path));
            return found;
        }
        finally
        {
            _ = CloseFolder(open);
        }
    }

    /// <summary>Opens a file to be read.</summary>
    /// <exception cref="IOException">It cannot be opened.</exception>
    /// <exception cref="UnauthorizedAccessException">It may not be read.</exception>
    public static FileStream Open(byte[] path)
    {
        var file = OpenFile(Ended(path), CloseOnRun);
        return file >= 0 ? new(new SafeFileHandle(file, ownsHandle: true), FileAccess.Read) : throw Failure();
    }

    private static byte[] Ended(byte[] path) => [.. path, 0];

    private static byte[] NameOf(nint entry)
    {
        var most = Marshal.ReadInt16(entry, LengthAt) - NameAt;
        var name = new byte[most];
        Marshal.Copy(entry + NameAt, name, 0, most);
        return name[..Math.Max(0, Array.IndexOf(name, (byte)0))];
    }

    /// <summary>DT_DIR, DT_REG and DT_LNK; DT_UNKNOWN is taken for a file, which opening then shows to be one or not.</summary>
    private static ByteNamed.Kinds KindOf(byte type) =>
        type switch
        {
            0 or 8 => ByteNamed.Kinds.File,
            4 => ByteNamed.Kinds.Folder,
            10 => ByteNamed.Kinds.Link,
            _ => ByteNamed.Kinds.Other,
        };

    private static Exception Failure() =>
        Marshal.GetLastPInvokeError() == Forbidden
            ? new UnauthorizedAccessException()
            : new IOException($"The system gives error {Marshal.GetLastPInvokeError()}");

    [DllImport("libc", EntryPoint = "opendir", SetLastError = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern nint OpenFolder(byte[] path);

    [DllImport("libc", EntryPoint = "readdir")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern nint Next(nint folder);

    [DllImport("libc", EntryPoint = "closedir")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int CloseFolder(nint folder);

    [DllImport("libc", EntryPoint = "open", SetLastError = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int OpenFile(byte[] path, int flags);
}
