namespace ClassKit.Tests;

/// <summary>An independent spreadsheet program that opens, recalculates and saves workbooks without a screen.</summary>
internal static class LibreOffice
{
    private static readonly Lock OneAtATime = new();
    private static readonly Lazy<string> Profile = new(MakeProfile);

    /// <summary>The workbook as that program saves it in another format; <paramref name="filter"/> as in <c>xlsx:Calc MS Excel 2007 XML</c>.</summary>
    public static byte[] Convert(byte[] workbook, string filter)
    {
        Tool.LibreOffice.Require();
        var folder = Directory.CreateTempSubdirectory("classkit-");
        try
        {
            var source = Path.Combine(folder.FullName, "workbook.xlsx");
            File.WriteAllBytes(source, workbook);
            var target = folder.CreateSubdirectory("saved").FullName;
            lock (OneAtATime)
                Tool.LibreOffice.Run("-env:UserInstallation=file://" + Profile.Value, "--headless", "--convert-to", filter, "--outdir", target, source);
            return File.ReadAllBytes(Assert.Single(Directory.GetFiles(target)));
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    /// <summary>The workbook opened, recalculated and saved again as .xlsx.</summary>
    public static byte[] SaveAgain(byte[] workbook) => Convert(workbook, "xlsx:Calc MS Excel 2007 XML");

    /// <summary>A fresh profile takes long to make; one serves for all conversions of a test run.</summary>
    private static string MakeProfile()
    {
        var profile = Directory.CreateTempSubdirectory("classkit-profile-");
        AppDomain.CurrentDomain.ProcessExit += (_, _) => profile.Delete(recursive: true);
        return profile.FullName;
    }
}
