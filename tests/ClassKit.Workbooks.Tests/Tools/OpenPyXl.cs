namespace ClassKit.Workbooks.Tests.Tools;

/// <summary>A Python library that reads and writes workbooks in its own way.</summary>
internal static class OpenPyXl
{
    private static readonly Lazy<string?> Python = new(() =>
        new[] { "python3", "/usr/bin/python3" }.FirstOrDefault(python => Tool.Works(python, "-c", "import openpyxl")));

    /// <summary>Runs lines of Python on the workbook <c>w</c> and gives the workbook as saved and what the lines printed.</summary>
    public static (byte[] Saved, string Printed) Run(byte[] workbook, string lines)
    {
        Tool.Require(Python.Value is not null, "openpyxl for python3");
        var folder = Directory.CreateTempSubdirectory("classkit-");
        try
        {
            var file = Path.Combine(folder.FullName, "workbook.xlsx");
            File.WriteAllBytes(file, workbook);
            var script = $"import sys, openpyxl\nw = openpyxl.load_workbook(sys.argv[1])\n{lines}\nw.save(sys.argv[1])\n";
            var printed = Tool.Run(Python.Value!, "-c", script, file);
            return (File.ReadAllBytes(file), printed);
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }
}
