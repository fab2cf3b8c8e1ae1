using System.Security.Cryptography;
using ClassKit.Grading.Findings.Refusals;
using ClassKit.Grading.Intake;
using ClassKit.Workbooks.Returned;
using ClassKit.Workbooks.Returned.Packages;

namespace ClassKit.UseCases.Intake;

/// <summary>Reads a returned file as a workbook, or says why not.</summary>
internal static class FileReading
{
    private static readonly string[] WorkbookEndings = [".xlsx", ".xlsm", ".ods"];

    /// <summary>True for a file with bytes that somebody handed in.</summary>
    public static bool MayBeWorkbook(ReturnedItem item) => item.Content is not null && Leftovers.Of(item.Path) is null;

    /// <summary>What tells two files apart whose names are of one student: what is in them, and an ending that refusals speak of.</summary>
    public static string Identity(ReturnedItem item) => Digest(item.Content!) + EndingOf(item.Path);

    /// <summary>Reads a file; its name decides nothing but whether somebody handed it in.</summary>
    public static ReturnedFile Read(ReturnedItem item)
    {
        if (!MayBeWorkbook(item))
            return Unread(item);
        var reading = ReturnedWorkbookReader.Read(item.Content!, ReadLimits.Practice);
        return new(item.Path, reading.Workbook, Named(reading.Refusal, item.Path))
        {
            Digest = Digest(item.Content!),
            Modified = reading.Properties.Modified,
            SavedBy = reading.Properties.LastModifiedBy,
            Dated = item.Dated,
        };
    }

    /// <summary>A file that could not be read or judged.</summary>
    public static ReturnedFile Failed(ReturnedItem item, Exception failure) =>
        Unread(item with { Refusal = ItemFailure.Why(failure), Fault = ItemFailure.Fault(failure) });

    private static ReturnedFile Unread(ReturnedItem item)
    {
        return new(item.Path, null, Leftovers.Of(item.Path) is { } left ? new Refusal.Leftover(left) : item.Refusal)
        {
            Dated = item.Dated,
            Digest = item.Content is { } bytes ? Digest(bytes) : null,
            Fault = item.Fault,
        };
    }

    /// <summary>A file of another kind that bears a workbook's name.</summary>
    private static Refusal? Named(Refusal? refusal, string path) =>
        refusal is Refusal.OtherKind other ? other with { Ending = EndingOf(path) } : refusal;

    private static string? EndingOf(string path) =>
        WorkbookEndings.FirstOrDefault(ending => path.EndsWith(ending, StringComparison.OrdinalIgnoreCase));

    private static string Digest(byte[] bytes) => Convert.ToHexStringLower(SHA256.HashData(bytes));
}
