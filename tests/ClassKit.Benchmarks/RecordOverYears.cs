using System.Diagnostics;
using System.Globalization;
using System.Text;
using ClassKit.Exercises.Cohorts;
using ClassKit.Records.Classes;
using ClassKit.Records.Deals;
using ClassKit.Records.Gradings;
using ClassKit.Records.Storage;

namespace ClassKit.Benchmarks;

/// <summary>
/// The record of an instructor after years: opening it, one student's page and one class's page over one indexed query of the same file, in
/// one run, and the size of the file. <c>dotnet run -c Release --project tests/ClassKit.Benchmarks -- record-over-years [YEARS]</c>;
/// claimed: at most 50 times, and less than 1 GB after 5 years.
/// </summary>
internal static class RecordOverYears
{
    private const int Classes = 30,
        Students = 30,
        Assignments = 40,
        Parts = 12,
        Trials = 201;

    private static readonly DateTimeOffset Now = new(2026, 11, 29, 12, 0, 0, TimeSpan.Zero);

    public static void Run(int years)
    {
        var folder = Directory.CreateTempSubdirectory("classkit-record-").FullName;
        try
        {
            var file = Path.Combine(folder, TeachingRecord.FileName);
            using (var record = TeachingRecord.Open(file, Now, mayBegin: true))
            {
                for (var year = 0; year < years; year++)
                {
                    for (var number = 0; number < Classes; number++)
                        Fill(record, $"Class {year}-{number}", new(year * 1000 + number));
                }
            }
            Report(file, years);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static void Report(string file, int years)
    {
        using var record = TeachingRecord.Open(file, Now, mayBegin: false);
        var named = record.Read(session => ClassRegister.Find(session, "Class 0-7"))!;
        var query = Median(() => record.Read(session => ClassRegister.FindStudent(session, "class 0-7-11")));
        (string, TimeSpan)[] rows =
        [
            ("one indexed query", query),
            ("opening", Median(() => TeachingRecord.Open(file, Now, mayBegin: false).Dispose())),
            ("one student's page", Median(() => record.Read(session => GradesForPages.OfStudent(session, "class 0-7-11")))),
            ("one class's page", Median(() => record.Read(session => GradesForPages.OfClass(session, named)))),
        ];
        Console.WriteLine(
            string.Create(
                CultureInfo.InvariantCulture,
                $"{Classes} classes of {Students}, {Assignments} assignments of {Parts} parts, {years} years: {new FileInfo(file).Length / 1e6:0} MB"
            )
        );
        foreach (var (what, time) in rows)
            Console.WriteLine(
                string.Create(CultureInfo.InvariantCulture, $"{what, -20} {time.TotalMicroseconds, 9:0} µs {time / query, 6:0.0} ×")
            );
    }

    private static void Fill(TeachingRecord record, string name, Random random)
    {
        Student[] students =
        [
            .. Enumerable.Range(0, Students).Select(number => new Student($"{name.ToLowerInvariant()}-{number}", $"Student {number}")),
        ];
        record.Write(new(Now, "Kim", "test", name, ""), session =>
        {
            var named = ClassRegister.Put(session, name);
            ClassRegister.Enrol(session, named, students, new(2026, 9, 1));
            for (var assignment = 0; assignment < Assignments; assignment++)
                Fill(session, named, students, random);
            return true;
        });
    }

    private static void Fill(WritingSession session, RecordedClass named, Student[] students, Random random)
    {
        var digest = Convert.ToHexStringLower(Bytes(random, 32));
        DealRegister.Put(
            session,
            named,
            new(
                digest,
                digest[..8],
                "lesson",
                "Percentages and yield",
                Entry(random, Parts * 4),
                [.. Enumerable.Range(0, Parts).Select(part => new DealPart($"exercise_{part / 3}", $"part_{part}", "percent"))],
                [.. students.Select(student => new DealSeat(student.Id, Entry(random, Parts)))]
            )
        );
        GradingRegister.Put(
            session,
            new(
                digest,
                digest,
                3,
                "1.0.0",
                Entry(random, Parts),
                [
                    .. students.Select(student => new GradedStudent(
                        student.Id,
                        "graded",
                        random.Next(0, 41),
                        40,
                        null,
                        null,
                        [
                            .. Enumerable
                                .Range(0, Parts)
                                .Select(part => new RecordedAnswer(part, "sound", random.Next(0, 3), 2, null, null, null)),
                        ],
                        Entry(random, Parts)
                    )),
                ],
                [
                    .. students.Select(student => new ReturnedEntry(
                        student.Id,
                        Convert.ToHexStringLower(Bytes(random, 32)),
                        $$"""{"file":"{{student.Id}}.xlsx","fate":"graded","student":"{{student.Id}}"}"""
                    )),
                ],
                []
            )
        );
    }

    /// <summary>As much as grades.json says of so many answers, and as varied.</summary>
    private static string Entry(Random random, int answers)
    {
        var text = new StringBuilder("""{"id":"student","name":"Student","status":"graded","file":"student.xlsx","answers":[""");
        for (var answer = 0; answer < answers; answer++)
        {
            text.Append(
                CultureInfo.InvariantCulture,
                $$"""{"exercise":"exercise_{{answer / 3}}","part":"part_{{answer}}","outcome":"sound","points":{{random.Next(0, 3)}},"outOf":2,"value":{{random.NextDouble() * 1000}},"expected":{{random.NextDouble() * 1000}},"formula":"=C{{random.Next(7, 30)}}*C{{random.Next(7, 30)}}/C{{random.Next(7, 30)}}","misconception":null,"note":"Right, and your formula follows the sheet's numbers.","findings":[{"kind":"right"}]},"""
            );
        }
        return text.Append("]}").ToString();
    }

    private static byte[] Bytes(Random random, int count)
    {
        var bytes = new byte[count];
        random.NextBytes(bytes);
        return bytes;
    }

    private static TimeSpan Median(Action work) => Times(work).Order().ElementAt(Trials / 2);

    private static IEnumerable<TimeSpan> Times(Action work)
    {
        for (var trial = 0; trial < Trials; trial++)
        {
            var start = Stopwatch.GetTimestamp();
            work();
            yield return Stopwatch.GetElapsedTime(start);
        }
    }
}
