using System.Security.Cryptography;
using ClassKit.Grading;
using ClassKit.Workbooks;

namespace ClassKit.UseCases;

/// <summary>Reads a returned file as a workbook, or says in words for the student why not.</summary>
internal static class FileReading
{
    private static readonly string[] WorkbookEndings = [".xlsx", ".xlsm", ".ods"];

    /// <summary>Reads a file; its name decides nothing but whether somebody handed it in.</summary>
    public static ReturnedFile Read(ReturnedItem item)
    {
        var leftover = Leftovers.Explain(item.Path);
        if (item.Content is not { } bytes || leftover is not null)
            return new(item.Path, null, leftover ?? item.Refusal) { IsLeftover = leftover is not null, Dated = item.Dated, Digest = item.Content is null ? null : Digest(item.Content) };
        var reading = ReturnedWorkbookReader.Read(bytes, ReadLimits.Practice);
        return new(item.Path, reading.Workbook, reading.Refusal is { } refusal ? Words(refusal, item.Path) : null)
        {
            Digest = Digest(bytes),
            Modified = reading.Properties.Modified,
            SavedBy = reading.Properties.LastModifiedBy,
            Dated = item.Dated,
        };
    }

    private static string Words(Refusal refusal, string path) =>
        refusal.Kind is RefusalKind.OtherKind or RefusalKind.OtherSpreadsheet && WorkbookEndings.FirstOrDefault(ending => path.EndsWith(ending, StringComparison.OrdinalIgnoreCase)) is { } ending
            ? $"{refusal.Reason} (Its name ends in {ending}, but a new name does not convert a file.)"
            : refusal.Reason;

    private static string Digest(byte[] bytes) => Convert.ToHexStringLower(SHA256.HashData(bytes));
}
