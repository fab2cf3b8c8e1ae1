using System.Diagnostics;

namespace ClassKit.Tests;

/// <summary>
/// A program that is not ours and that some tests need. Where it is missing a test is skipped, or fails if CLASSKIT_REQUIRE_TOOLS is 1.
/// </summary>
internal sealed class Tool
{
    private readonly string? _path;
    private readonly string _package;

    private Tool(string package, params IReadOnlyList<string> paths)
    {
        _package = package;
        _path = paths.FirstOrDefault(File.Exists);
    }

    public static Tool LibreOffice { get; } = new("libreoffice-calc-nogui", "/usr/bin/soffice", "/usr/bin/libreoffice");

    public static Tool Chromium { get; } =
        new(
            "chromium-headless-shell",
            "/usr/bin/chromium-headless-shell",
            "/usr/bin/chromium",
            "/usr/bin/chromium-browser",
            "/usr/bin/google-chrome"
        );

    // Debian's python3-openpyxl installs for Debian's python, not for another one on the PATH.
    public static Tool PythonWithOpenPyXl { get; } =
        new("python3-openpyxl", Directory.Exists("/usr/lib/python3/dist-packages/openpyxl") ? ["/usr/bin/python3"] : []);

    public static Tool PythonWithUno { get; } =
        new("python3-uno", File.Exists("/usr/lib/python3/dist-packages/uno.py") ? ["/usr/bin/python3"] : []);

    public static Tool PythonWithPyLd { get; } =
        new("python3-pyld", Directory.Exists("/usr/lib/python3/dist-packages/pyld") ? ["/usr/bin/python3"] : []);

    public static Tool PdfToText { get; } = new("poppler-utils", "/usr/bin/pdftotext");

    public static Tool PdfToHtml { get; } = new("poppler-utils", "/usr/bin/pdftohtml");

    /// <summary>The face that an office suite without Calibri sets in its place: as wide, where others make every column wider.</summary>
    public static Tool Carlito { get; } = new("fonts-crosextra-carlito", "/usr/share/fonts/truetype/crosextra/Carlito-Regular.ttf");

    public static Tool RWithPsych { get; } =
        new("r-cran-psych", Directory.Exists("/usr/lib/R/site-library/psych") ? ["/usr/bin/Rscript"] : []);

    public static Tool RWithErm { get; } = new("r-cran-erm", Directory.Exists("/usr/lib/R/site-library/eRm") ? ["/usr/bin/Rscript"] : []);

    /// <summary>The program; null where it is missing.</summary>
    public string? Find() => _path;

    /// <summary>The program; where it is missing the test is skipped, or fails if the environment says that tools are compulsory.</summary>
    public string Require()
    {
        if (_path is not null)
            return _path;
        var reason = $"This test needs Debian's package {_package}.";
        if (Environment.GetEnvironmentVariable("CLASSKIT_REQUIRE_TOOLS") == "1")
            Assert.Fail(reason);
        Assert.Skip(reason);
        throw new UnreachableException();
    }

    /// <summary>Runs the program and returns what it printed; a failure fails the test with what it said.</summary>
    public string Run(params IReadOnlyList<string> arguments)
    {
        var start = new ProcessStartInfo(Require(), arguments) { RedirectStandardOutput = true, RedirectStandardError = true };
        start.Environment["LC_ALL"] = "C.UTF-8";
        using var process = Process.Start(start)!;
        var errors = process.StandardError.ReadToEndAsync();
        var output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        Assert.True(
            process.ExitCode == 0,
            $"{start.FileName} {string.Join(' ', arguments)} ended with {process.ExitCode}:\n{output}\n{errors.Result}"
        );
        return output;
    }
}
