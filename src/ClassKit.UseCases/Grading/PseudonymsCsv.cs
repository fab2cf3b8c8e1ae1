using System.Globalization;
using ClassKit.Grading.Pseudonyms;
using CsvHelper;
using CsvHelper.Configuration;

namespace ClassKit.UseCases.Grading;

/// <summary>pseudonyms.csv: who is who in reports without names.</summary>
internal static class PseudonymsCsv
{
    public const string FileName = "pseudonyms.csv";

    public static string Write(PseudonymKey key)
    {
        using var text = new StringWriter(CultureInfo.InvariantCulture);
        using (var csv = new CsvWriter(text, new CsvConfiguration(CultureInfo.InvariantCulture) { NewLine = "\r\n", InjectionOptions = InjectionOptions.Escape }))
        {
            WriteRow(csv, "pseudonym", "id", "name");
            foreach (var (student, pseudonym) in key.Entries) WriteRow(csv, pseudonym, student.Id, student.Name);
        }

        return text.ToString();
    }

    private static void WriteRow(CsvWriter csv, params IReadOnlyList<string> cells)
    {
        foreach (var cell in cells) csv.WriteField(cell);
        csv.NextRecord();
    }
}
