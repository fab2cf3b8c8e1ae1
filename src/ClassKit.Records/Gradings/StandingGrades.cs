using ClassKit.Records.Classes;
using ClassKit.Records.Storage;

namespace ClassKit.Records.Gradings;

/// <summary>What is asked for a page: points by deal, from indexes alone, without unpacking anything.</summary>
public static class StandingGrades
{
    private const string Standing =
        """
        SELECT code, title, student, status, points, out_of FROM deal JOIN grading ON grading.deal = deal.id JOIN graded ON graded.grading = grading.id
        WHERE number = (SELECT max(number) FROM grading AS later WHERE later.deal = deal.id) AND
        """;

    /// <summary>Everything of one student, in the order in which it went on record.</summary>
    public static IReadOnlyList<StandingGrade> OfStudent(RecordSession session, string student)
    {
        ArgumentNullException.ThrowIfNull(session);
        return session.Query(Standing + " student = $1 ORDER BY deal.id", Made, student);
    }

    /// <summary>Everything of one class, by deal, students in the order of its grades; erased ones are nobody's.</summary>
    public static IReadOnlyList<StandingGrade> OfClass(RecordSession session, RecordedClass named)
    {
        ArgumentNullException.ThrowIfNull(session);
        ArgumentNullException.ThrowIfNull(named);
        return session.Query(Standing + " class = $1 ORDER BY deal.id, place", Made, named.Id);
    }

    private static StandingGrade Made(Row row) => new(row.Text(0), row.Text(1), row.TextOrNull(2), row.Text(3), row.PointsOrNull(4), row.PointsOrNull(5));
}
