using System.Security.Cryptography;
using ClassKit.Grading.Intake;
using ClassKit.Workbooks.Returned;
using ClassKit.Workbooks.Returned.Packages;

namespace ClassKit.UseCases.Intake;

/// <summary>Reads a returned file as a workbook, or says in words for the student why not.</summary>
internal static class FileReading
{
    private static readonly string[] WorkbookEndings = [".xlsx", ".xlsm", ".ods"];

    /// <summary>True for a file with bytes that somebody handed in.</summary>
    public static bool MayBeWorkbook(ReturnedItem item) => item.Content is not null && Leftovers.Explain(item.Path) is null;

    /// <summary>What tells two files apart whose names are of one student: what is in them, and an ending that refusals speak of.</summary>
    public static string Identity(ReturnedItem item) => Digest(item.Content!) + EndingOf(item.Path);

    /// <summary>Reads a file; its name decides nothing but whether somebody handed it in.</summary>
    public static ReturnedFile Read(ReturnedItem item)
    {
        if (!MayBeWorkbook(item)) return Unread(item);
        var reading = ReturnedWorkbookReader.Read(item.Content!, ReadLimits.Practice);
        return new(item.Path, reading.Workbook, reading.Refusal is { } refusal ? Words(refusal, item.Path) : null)
        {
            Digest = Digest(item.Content!),
            Modified = reading.Properties.Modified,
            SavedBy = reading.Properties.LastModifiedBy,
            Dated = item.Dated,
        };
    }

    /// <summary>A file that could not be read or judged.</summary>
    public static ReturnedFile Failed(ReturnedItem item, Exception failure) =>
        Unread(item with { Refusal = ItemFailure.Words(failure), Fault = ItemFailure.Fault(failure) });

    private static ReturnedFile Unread(ReturnedItem item)
    {
        var leftover = Leftovers.Explain(item.Path);
        return new(item.Path, null, leftover ?? item.Refusal)
        {
            IsLeftover = leftover is not null,
            Dated = item.Dated,
            Digest = item.Content is { } bytes ? Digest(bytes) : null,
            Fault = item.Fault,
        };
    }

    private static string Words(Refusal refusal, string path) =>
        refusal.Kind is RefusalKind.OtherKind or RefusalKind.OtherSpreadsheet && EndingOf(path) is { } ending
            ? $"{refusal.Reason} (Its name ends in {ending}, but a new name does not convert a file.)"
            : refusal.Reason;

    private static string? EndingOf(string path) => WorkbookEndings.FirstOrDefault(ending => path.EndsWith(ending, StringComparison.OrdinalIgnoreCase));

    private static string Digest(byte[] bytes) => Convert.ToHexStringLower(SHA256.HashData(bytes));
}
