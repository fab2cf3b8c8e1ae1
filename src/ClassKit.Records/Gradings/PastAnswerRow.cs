using ClassKit.Records.Storage;

namespace ClassKit.Records.Gradings;

/// <summary>An answer of any class, by the grading of its deal that stands.</summary>
/// <param name="Class">What the class is called.</param>
/// <param name="Deal">The deal's code.</param>
/// <param name="Work">Whose work it is part of: the same number for answers of one student to one deal, and no student's name.</param>
/// <param name="Exercise">The exercise's id.</param>
/// <param name="Part">The part's id within it.</param>
/// <param name="Answer">What became of it; without the reason of a correction.</param>
public sealed record PastAnswerRow(string Class, string Deal, long Work, string Exercise, string Part, RecordedAnswer Answer)
{
    private const string Sql = """
        SELECT class.name, deal.code, graded.id, exercise, part, answer.place, outcome, answer.points, answer.out_of, misconception, near_miss, as_graded
        FROM deal JOIN class ON class.id = deal.class JOIN grading ON grading.deal = deal.id JOIN graded ON graded.grading = grading.id JOIN answer ON answer.graded = graded.id
        JOIN deal_part ON deal_part.deal = deal.id AND deal_part.place = answer.place LEFT JOIN correction ON correction.graded = answer.graded AND correction.place = answer.place
        WHERE number = (SELECT max(number) FROM grading AS later WHERE later.deal = deal.id) ORDER BY graded.id, answer.place
        """;

    /// <summary>Every answer on record, those of one work together; of erased students too, whose answers are nobody's.</summary>
    public static IReadOnlyList<PastAnswerRow> All(RecordSession session)
    {
        ArgumentNullException.ThrowIfNull(session);
        return session.Query(Sql, row => new PastAnswerRow(
            row.Text(0),
            row.Text(1),
            row.Number(2),
            row.Text(3),
            row.Text(4),
            new(
                row.Whole(5),
                row.Text(6),
                row.Points(7),
                row.Points(8),
                row.TextOrNull(9),
                row.TextOrNull(10),
                row.PointsOrNull(11) is { } asGraded ? new(asGraded, null) : null
            )
        ));
    }
}
