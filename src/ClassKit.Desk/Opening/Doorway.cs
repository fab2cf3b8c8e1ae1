using System.ComponentModel;
using System.Diagnostics;
using System.Text;
using System.Text.Encodings.Web;

namespace ClassKit.Desk.Opening;

/// <summary>
/// A page on disk, for this user alone, that leads the browser to the desk: a key among the arguments of a program could be read by every
/// user of the machine.
/// </summary>
internal sealed class Doorway : IDisposable
{
    private readonly string _file;

    private Doorway(string file) => _file = file;

    /// <summary>Opens the browser.</summary>
    /// <param name="address">Where it is led to.</param>
    /// <param name="folder">Where the page lies for a moment; null for the system's place for such files.</param>
    /// <returns>Takes the page away again; null where no browser could be opened.</returns>
    public static Doorway? Open(string address, string? folder)
    {
        var file = Path.Combine(folder ?? Path.GetTempPath(), $".classkit-desk-{Environment.ProcessId}.html");
        var doorway = new Doorway(file);
        try
        {
            File.Delete(file);
            var options = new FileStreamOptions { Mode = FileMode.CreateNew, Access = FileAccess.Write };
            if (!OperatingSystem.IsWindows())
                options.UnixCreateMode = UnixFileMode.UserRead | UnixFileMode.UserWrite;
            using (var page = new StreamWriter(file, Encoding.UTF8, options))
            {
                var link = HtmlEncoder.Default.Encode(address);
                page.Write(
                    $"<!DOCTYPE html><html lang=\"en\"><meta charset=\"utf-8\"><title>ClassKit</title><meta http-equiv=\"refresh\" content=\"0; url={link}\"><p><a href=\"{link}\">The desk</a></p></html>"
                );
            }
            using var browser = Process.Start(new ProcessStartInfo(file) { UseShellExecute = true });
            return doorway;
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException or Win32Exception)
        {
            doorway.Dispose();
            return null;
        }
    }

    public void Dispose()
    {
        try
        {
            File.Delete(_file);
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            // It leads to a desk that is closed, with a key that was used.
        }
    }
}
