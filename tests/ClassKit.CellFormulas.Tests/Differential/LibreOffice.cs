using System.Diagnostics;

namespace ClassKit.CellFormulas.Tests;

/// <summary>An independent spreadsheet program, to compare with. Tests that need it are skipped without it, unless CLASSKIT_REQUIRE_TOOLS=1 says that it must be there.</summary>
internal static class LibreOffice
{
    /// <summary>Has it compute a workbook.</summary>
    /// <returns>The values of all cells.</returns>
    public static Dictionary<CellAddress, CellValue> Compute(WorkbookSnapshot workbook)
    {
        var program = Find();
        if (program is null && Environment.GetEnvironmentVariable("CLASSKIT_REQUIRE_TOOLS") == "1")
            Assert.Fail("soffice is not on the path, and CLASSKIT_REQUIRE_TOOLS=1 requires it: install libreoffice-calc-nogui.");
        Assert.SkipWhen(program is null, "soffice is not on the path: install libreoffice-calc-nogui to compare with LibreOffice.");

        var folder = Directory.CreateTempSubdirectory("classkit-libreoffice-");
        try
        {
            var input = Path.Combine(folder.FullName, "formulas.xlsx");
            XlsxFile.Write(workbook, input);
            var start = new ProcessStartInfo(program!) { RedirectStandardOutput = true, RedirectStandardError = true };
            foreach (var argument in new[]
            {
                $"-env:UserInstallation={new Uri(Path.Combine(folder.FullName, "profile")).AbsoluteUri}", "--headless", "--norestore", "--convert-to", "xlsx:Calc MS Excel 2007 XML",
                "--outdir", Path.Combine(folder.FullName, "out"), input,
            }) start.ArgumentList.Add(argument);
            start.Environment["LC_ALL"] = "C.UTF-8";
            using var process = Process.Start(start)!;
            var errors = process.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);
            var output = process.StandardOutput.ReadToEnd();
            process.WaitForExit();
            var result = Path.Combine(folder.FullName, "out", "formulas.xlsx");
            Assert.True(File.Exists(result), $"LibreOffice made no file: {output} {errors.Result}");
            return XlsxFile.ReadValues(result);
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    private static string? Find() => (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator)
        .SelectMany(folder => new[] { Path.Combine(folder, "soffice"), Path.Combine(folder, "libreoffice") })
        .FirstOrDefault(File.Exists);
}
