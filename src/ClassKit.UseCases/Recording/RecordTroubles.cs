using ClassKit.Content.Diagnostics;
using ClassKit.Records.Storage;

namespace ClassKit.UseCases.Recording;

/// <summary>What is wrong with a record, in words, with what to do.</summary>
internal static class RecordTroubles
{
    /// <summary>What a work on the record comes to, or what is wrong with the record.</summary>
    public static Reading<T> Told<T>(Func<Reading<T>> work)
        where T : class
    {
        try
        {
            return work();
        }
        catch (RecordException failure)
        {
            return new(null, [Of(failure)]);
        }
    }

    private static Diagnostic Of(RecordException failure)
    {
        var (found, expected) = Words(failure.Trouble, () => Restore(failure.Path));
        return new(failure.Path, null, found, expected);
    }

    /// <summary>The newest copy by its name, and what was done since must be done again.</summary>
    private static string Restore(string record) =>
        Backups.Of(record) is [.., var newest]
            ? $"Move it away and put the newest copy in its place: `{Backups.Folder}/{Path.GetFileName(newest)}`. What was entered since then is entered again."
            : "No copy was made beside it. Move it away, and take one that you kept on another disk, or enter grades and terms from their folders again.";

    private static (string Found, string Expected) Words(RecordTrouble trouble, Func<string> restore) =>
        trouble switch
        {
            RecordTrouble.Missing => (
                "There is no record here",
                "Name the file of the record, or the folder that it lies in; the first thing that is entered begins one."
            ),
            RecordTrouble.Occupied => (
                "There is a file here already",
                "Name a file that does not exist yet: a record is never written over."
            ),
            RecordTrouble.Foreign => (
                "This is no record of ours",
                "Name the file that ClassKit made, usually `"
                    + TeachingRecord.FileName
                    + "`. Nothing was changed. If it was the record and something wrote over it: "
                    + restore()
            ),
            RecordTrouble.Newer(var version, var known) => (
                $"A newer ClassKit wrote it: its tables are version {version}, and this program knows {known}",
                "Use the newer program. Nothing was changed."
            ),
            RecordTrouble.Truncated(var bytes, 0) => ($"It breaks off after {bytes} bytes", restore()),
            RecordTrouble.Truncated(var bytes, var expected) => ($"Its end is missing: it has {bytes} bytes of {expected}", restore()),
            RecordTrouble.Damaged(var what) => ($"Something wrote over parts of it ({what.ReplaceLineEndings(" ")})", restore()),
            RecordTrouble.Busy(null) => ("Somebody else is writing in it", "Nothing was changed. Wait until they are done, and try again."),
            RecordTrouble.Busy(var writer) => (
                $"Somebody else is writing in it ({writer})",
                "Nothing was changed. Wait until they are done, and try again."
            ),
            RecordTrouble.Full => (
                "There is no room left on the disk",
                "What was on record before is as it was. Make room, and try again."
            ),
            RecordTrouble.Unreachable(var what) => (
                $"The system lets nobody at it ({what.TrimEnd('.')})",
                "Look whether the folder is there, is the one you mean and may be written to, and try again."
            ),
            _ => throw new System.Diagnostics.UnreachableException($"No words for {trouble}."),
        };
}
