namespace ClassKit.Tests;

/// <summary>An independent spreadsheet program that opens, recalculates and saves workbooks without a screen.</summary>
internal static class LibreOffice
{
    private const string Xlsx = "xlsx:Calc MS Excel 2007 XML";

    /// <summary>
    /// Formats that an office suite that stays open is asked for, with its own names of them; others are converted as the command line
    /// knows them.
    /// </summary>
    private static readonly Dictionary<string, string> Usual = new()
    {
        [Xlsx] = "Calc MS Excel 2007 XML",
        ["ods"] = "calc8",
        ["xls"] = "MS Excel 97",
        ["html"] = "HTML (StarCalc)",
        ["pdf"] = "calc_pdf_Export",
    };

    private static readonly Lock OneAtATime = new();
    private static readonly Lazy<string> Profile = new(MakeProfile);

    /// <summary>
    /// The workbook as that program saves it in another format; <paramref name="filter"/> as in <c>xlsx:Calc MS Excel 2007 XML</c>.
    /// </summary>
    public static byte[] Convert(byte[] workbook, string filter) => Assert.Single(Convert([workbook], filter));

    /// <summary>The workbook opened, recalculated and saved again as .xlsx.</summary>
    public static byte[] SaveAgain(byte[] workbook) => Convert(workbook, Xlsx);

    /// <summary>The same for many, in one run of the program.</summary>
    public static IReadOnlyList<byte[]> SaveAgain(IReadOnlyList<byte[]> workbooks) => Convert(workbooks, Xlsx);

    /// <summary>Many saved in another format, in one run of the program.</summary>
    public static IReadOnlyList<byte[]> Convert(IReadOnlyList<byte[]> workbooks, string filter)
    {
        Tool.LibreOffice.Require();
        var folder = Directory.CreateTempSubdirectory("classkit-");
        try
        {
            List<string> sources = [.. workbooks.Select((_, at) => Path.Combine(folder.FullName, $"workbook{at:0000}.xlsx"))];
            foreach (var (source, workbook) in sources.Zip(workbooks))
                File.WriteAllBytes(source, workbook);
            var target = folder.CreateSubdirectory("saved").FullName;
            if (Usual.TryGetValue(filter, out var name) && RunningOffice.Current is { } office)
            {
                foreach (var source in sources)
                    office.Save(source, Path.Combine(target, Path.ChangeExtension(Path.GetFileName(source), filter.Split(':')[0])), name);
            }
            else
            {
                lock (OneAtATime)
                    Tool.LibreOffice.Run([
                        "-env:UserInstallation=file://" + Profile.Value,
                        "--headless",
                        "--convert-to",
                        filter,
                        "--outdir",
                        target,
                        .. sources,
                    ]);
            }
            List<string> saved = [.. Directory.GetFiles(target).Order(StringComparer.Ordinal)];
            Assert.Equal(workbooks.Count, saved.Count);
            return [.. saved.Select(File.ReadAllBytes)];
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    /// <summary>A fresh profile takes long to make; one serves for all conversions of a test run.</summary>
    private static string MakeProfile()
    {
        var profile = Directory.CreateTempSubdirectory("classkit-profile-");
        AppDomain.CurrentDomain.ProcessExit += (_, _) => profile.Delete(recursive: true);
        return profile.FullName;
    }
}
