using System.Globalization;
using ClassKit.Records.Storage;

namespace ClassKit.Records.Gradings;

/// <summary>
/// The students of one grading as a class's page needs them, in one text: to step through a row for each student costs more than all else.
/// </summary>
/// <remarks>Between students stands ';', between what is said of one '|'; no id, word or number of ours has them.</remarks>
internal static class ClassPage
{
    /// <summary>Of a student: id, status, points, out of.</summary>
    private const int Fields = 4;

    /// <summary>Makes the text of a grading from its rows, in place of the one that is there. One without students has none.</summary>
    public static void Put(WritingSession session, long grading) =>
        session.Run(
            """
            INSERT OR REPLACE INTO class_page (grading, students)
            SELECT grading, group_concat(concat(student, '|', status, '|', points, '|', out_of), ';' ORDER BY place) FROM graded WHERE grading = $1 GROUP BY grading
            """,
            grading
        );

    /// <summary>Reads a text back.</summary>
    /// <param name="grades">Are added to.</param>
    /// <param name="code">The code of the deal.</param>
    /// <param name="title">The title of the deal.</param>
    /// <param name="students">The text.</param>
    /// <exception cref="FormatException">It is none.</exception>
    public static void Read(List<StandingGrade> grades, string code, string title, ReadOnlySpan<char> students)
    {
        Span<Range> fields = stackalloc Range[Fields + 1];
        foreach (var range in students.Split(';'))
        {
            var student = students[range];
            if (student.IsEmpty)
                continue;
            if (student.Split(fields, '|') != Fields)
                throw new FormatException($"A student of a deal has other than {Fields} fields in the text for pages: {student}");
            var id = student[fields[0]];
            var status = student[fields[1]];
            grades.Add(
                new(
                    code,
                    title,
                    id.IsEmpty ? null : id.ToString(),
                    // Most are as the one before, and a class has a thousand of them.
                    grades is [.., { Status: var before }]
                    && status.SequenceEqual(before)
                        ? before
                        : status.ToString(),
                    Points(student[fields[2]]),
                    Points(student[fields[3]])
                )
            );
        }
    }

    private static decimal? Points(ReadOnlySpan<char> text) =>
        text.IsEmpty ? null
        : int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var whole) ? whole
        : decimal.Parse(text, NumberStyles.Number, CultureInfo.InvariantCulture);
}
