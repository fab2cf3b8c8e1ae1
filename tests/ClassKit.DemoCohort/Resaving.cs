using System.Diagnostics;

namespace ClassKit.DemoCohort;

/// <summary>Passes a workbook through a program that is not ours.</summary>
internal static class Resaving
{
    private const string OpenPyXlScript = "import sys, openpyxl; openpyxl.load_workbook(sys.argv[1]).save(sys.argv[2])";

    /// <summary>What the program makes of the workbook.</summary>
    public static byte[] Save(byte[] workbook, OtherProgram program)
    {
        if (program == OtherProgram.None)
            return workbook;
        var folder = Directory.CreateTempSubdirectory("classkit-").FullName;
        try
        {
            var (before, after) = (Path.Combine(folder, "in", "book.xlsx"), Path.Combine(folder, "out", "book.xlsx"));
            Directory.CreateDirectory(Path.GetDirectoryName(before)!);
            Directory.CreateDirectory(Path.GetDirectoryName(after)!);
            File.WriteAllBytes(before, workbook);
            if (program == OtherProgram.LibreOffice)
                Run(
                    "/usr/bin/soffice",
                    $"-env:UserInstallation={new Uri(Path.Combine(folder, "profile")).AbsoluteUri}",
                    "--headless",
                    "--convert-to",
                    "xlsx:Calc MS Excel 2007 XML",
                    "--outdir",
                    Path.GetDirectoryName(after)!,
                    before
                );
            else
                Run("/usr/bin/python3", "-c", OpenPyXlScript, before, after);
            return File.ReadAllBytes(after);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static void Run(string program, params IReadOnlyList<string> arguments)
    {
        using var process = Process.Start(new ProcessStartInfo(program, arguments) { RedirectStandardOutput = true })
            ?? throw new InvalidOperationException($"{program} did not start.");
        process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        if (process.ExitCode != 0)
            throw new InvalidOperationException($"{program} ended with {process.ExitCode}.");
    }
}
