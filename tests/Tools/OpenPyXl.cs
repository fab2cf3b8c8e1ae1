namespace ClassKit.Tests;

/// <summary>A Python library that reads and writes workbooks in its own way.</summary>
internal static class OpenPyXl
{
    /// <summary>Runs lines of Python on the workbook <c>w</c> and gives the workbook as saved and what the lines printed.</summary>
    public static (byte[] Saved, string Printed) Run(byte[] workbook, string lines)
    {
        Tool.PythonWithOpenPyXl.Require();
        var folder = Directory.CreateTempSubdirectory("classkit-");
        try
        {
            var file = Path.Combine(folder.FullName, "workbook.xlsx");
            File.WriteAllBytes(file, workbook);
            var script = $"import sys, openpyxl\nw = openpyxl.load_workbook(sys.argv[1])\n{lines}\nw.save(sys.argv[1])\n";
            var printed = Tool.PythonWithOpenPyXl.Run("-c", script, file);
            return (File.ReadAllBytes(file), printed);
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }
}
