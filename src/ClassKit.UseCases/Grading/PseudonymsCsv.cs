using ClassKit.Grading.Pseudonyms;
using ClassKit.UseCases.Output;

namespace ClassKit.UseCases.Grading;

/// <summary>pseudonyms.csv: who is who in reports without names.</summary>
internal static class PseudonymsCsv
{
    public const string FileName = "pseudonyms.csv";

    public static string Write(PseudonymKey key) =>
        CsvText.Of([
            ["pseudonym", "id", "name"],
            .. key.Entries.Select(entry => new[] { entry.Pseudonym, entry.Student.Id, entry.Student.Name }),
        ]);
}
