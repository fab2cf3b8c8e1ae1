using ClassKit.Records.Changes;
using ClassKit.Records.Classes;
using ClassKit.Records.Storage;

namespace ClassKit.Records.Gradings;

/// <summary>What is asked for a page: points by deal, from indexes alone, without unpacking anything.</summary>
public static class GradesForPages
{
    /// <summary>A row a deal.</summary>
    private const string OfDeals = """
        SELECT code, title, students FROM deal JOIN grading ON grading.deal = deal.id JOIN class_page ON class_page.grading = grading.id
        WHERE class = $1 AND number = (SELECT max(number) FROM grading AS later WHERE later.deal = deal.id)
        ORDER BY deal.id
        """;

    /// <summary>What every grading made of a student's work, by deal and number.</summary>
    public static IReadOnlyList<GradingOfStudent> OfStudent(RecordSession session, string student)
    {
        ArgumentNullException.ThrowIfNull(session);
        return session.Query(
            $"""
            SELECT number, code, title, status, points, out_of, {ChangeLog.Columns} FROM graded
            JOIN grading ON grading.id = graded.grading JOIN deal ON deal.id = grading.deal JOIN change ON change.id = grading.change WHERE student = $1 ORDER BY deal.id, number
            """,
            row => new GradingOfStudent(
                row.Whole(0),
                new(row.Text(1), row.Text(2), student, row.Text(3), row.PointsOrNull(4), row.PointsOrNull(5)),
                ChangeLog.Made(row, 6)
            ),
            student
        );
    }

    /// <summary>Everything of one class, by deal, students in the order of its grades; erased ones are nobody's.</summary>
    public static IReadOnlyList<StandingGrade> OfClass(RecordSession session, RecordedClass named)
    {
        ArgumentNullException.ThrowIfNull(session);
        ArgumentNullException.ThrowIfNull(named);
        List<StandingGrade> grades = [];
        session.Query(
            OfDeals,
            row =>
            {
                ClassPage.Read(grades, row.Text(0), row.Text(1), row.Text(2));
                return true;
            },
            named.Id
        );
        return grades;
    }
}
