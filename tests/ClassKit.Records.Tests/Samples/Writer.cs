using System.Diagnostics;
using System.Globalization;
using ClassKit.Records.Classes;
using ClassKit.Records.Storage;

namespace ClassKit.Records.Tests.Samples;

/// <summary>
/// This test program started once more, as a process that writes in a record without end and says after each commit what is in it for good.
/// </summary>
internal static class Writer
{
    /// <summary>Names the record to a process that is to write in it.</summary>
    public const string Variable = "CLASSKIT_TEST_WRITES_IN";

    /// <summary>A class of many students at once, so that a transaction has several pages to write.</summary>
    private const int Students = 200;

    public static Process Start(string file) =>
        Process.Start(
            new ProcessStartInfo(Environment.ProcessPath!, ["-class", typeof(Storage.WritingForever).FullName!])
            {
                RedirectStandardOutput = true,
                Environment = { [Variable] = file },
            }
        )!;

    /// <summary>Writes until it is ended from outside.</summary>
    public static void WriteForever(string file)
    {
        using var said = new StreamWriter(Console.OpenStandardOutput()) { AutoFlush = true };
        using var record = TeachingRecord.Open(file, Sample.Noon, mayBegin: true);
        for (var number = record.Read(ClassRegister.All).Count + 1; ; number++)
        {
            Sample.Enrol(
                record,
                Name(number),
                [.. Enumerable.Range(0, Students).Select(student => Sample.Ada with { Id = $"student-{number}-{student}" })]
            );
            said.WriteLine("committed " + number.ToString(CultureInfo.InvariantCulture));
        }
    }

    /// <summary>
    /// Every class of a record is whole, and there are as many as were said to be committed, or the one more whose word did not come
    /// through.
    /// </summary>
    public static void AssertWhole(TeachingRecord record, int committed)
    {
        record.Verify();
        var classes = record.Read(ClassRegister.All);
        Assert.InRange(classes.Count, committed, committed + 1);
        Assert.Equal(Enumerable.Range(1, classes.Count).Select(Name), classes.Select(one => one.Name));
        Assert.All(classes, one => Assert.Equal(Students, record.Read(session => ClassRegister.Of(session, one)).Count));
    }

    private static string Name(int number) => string.Create(CultureInfo.InvariantCulture, $"Class {number:00000}");
}
