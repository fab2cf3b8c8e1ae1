using ClassKit.Records.Deals;
using ClassKit.Records.Storage;

namespace ClassKit.Records.Gradings;

/// <summary>Gradings as they were. Grading again adds one; the highest number of a deal stands.</summary>
public static class GradingRegister
{
    /// <summary>Puts a grading on record.</summary>
    /// <returns>Its number; null if just that is what stands on record already, and nothing was written.</returns>
    /// <exception cref="InvalidOperationException">Its deal is not on record.</exception>
    public static int? Put(WritingSession session, RecordedGrading grading)
    {
        ArgumentNullException.ThrowIfNull(session);
        ArgumentNullException.ThrowIfNull(grading);
        var deal = DealRegister.Find(session, grading.Deal) ?? throw new InvalidOperationException("its deal goes on record first");
        var before = session.One(
            "SELECT number, digest, id FROM grading WHERE deal = $1 ORDER BY number DESC LIMIT 1",
            row => new Before(row.Whole(0), row.Text(1), row.Number(2)),
            deal
        );
        if (before?.Digest == grading.Digest)
            return null;
        var number = (before?.Number ?? 0) + 1;
        var id = session.Insert(
            "INSERT INTO grading (deal, number, digest, judge_version, program, frame, change) VALUES ($1, $2, $3, $4, $5, $6, $7)",
            deal,
            number,
            grading.Digest,
            grading.JudgeVersion,
            grading.Program,
            Packed.Of(grading.Frame),
            session.ChangeId
        );
        // What erased students came to is nobody's and stays in the class's statistics, though the files that are graded again know nothing
        // of it.
        IEnumerable<GradedStudent> nobodys = before is null ? [] : Students(session, before.Id).Where(student => student.Student is null);
        foreach (var (place, student) in grading.Students.Concat(nobodys).Index())
            Put(session, id, place, student);
        ClassPage.Put(session, id);
        foreach (var (place, file) in grading.Files.Index())
            session.Run(
                "INSERT INTO returned_file (grading, place, student, sha256, entry) VALUES ($1, $2, $3, $4, $5)",
                id,
                place,
                file.Student,
                Values.OrNull(file.Sha256),
                Packed.Of(file.Entry)
            );
        foreach (var (place, typed) in grading.Typed.Index())
            session.Run(
                "INSERT INTO gradebook_point (grading, place, student, entry) VALUES ($1, $2, $3, $4)",
                id,
                place,
                typed.Student,
                Packed.Of(typed.Entry)
            );
        return number;
    }

    /// <summary>The grading of a deal that stands, or null.</summary>
    public static RecordedGrading? Latest(RecordSession session, string deal)
    {
        ArgumentNullException.ThrowIfNull(session);
        return session.One(
            "SELECT grading.id, grading.digest, judge_version, program, frame, number FROM grading JOIN deal ON deal.id = grading.deal WHERE deal.digest = $1 ORDER BY number DESC LIMIT 1",
            row => new RecordedGrading(
                deal,
                row.Text(1),
                row.WholeOrNull(2),
                row.Text(3),
                row.Unpacked(4),
                Students(session, row.Number(0)),
                Files(session, row.Number(0)),
                Typed(session, row.Number(0))
            )
            {
                Number = row.Whole(5),
            },
            deal
        );
    }

    private static void Put(WritingSession session, long grading, int place, GradedStudent student)
    {
        var id = session.Insert(
            "INSERT INTO graded (grading, place, student, status, points, out_of, late_days, late_off, entry) VALUES ($1, $2, $3, $4, $5, $6, $7, $8, $9)",
            grading,
            place,
            student.Student,
            student.Status,
            student.Points,
            student.OutOf,
            student.LateDays,
            student.LateOff,
            student.Entry is { } entry ? Packed.Of(entry) : null
        );
        foreach (var answer in student.Answers)
        {
            session.Run(
                "INSERT INTO answer (graded, place, outcome, points, out_of, misconception, near_miss) VALUES ($1, $2, $3, $4, $5, $6, $7)",
                id,
                answer.Place,
                answer.Outcome,
                answer.Points,
                answer.OutOf,
                Values.OrNull(answer.Misconception),
                Values.OrNull(answer.NearMiss)
            );
            if (answer.Correction is { } correction)
                session.Run(
                    "INSERT INTO correction (graded, place, as_graded, points, reason) VALUES ($1, $2, $3, $4, $5)",
                    id,
                    answer.Place,
                    correction.AsGraded,
                    answer.Points,
                    Values.OrNull(correction.Reason)
                );
        }
    }

    private static List<GradedStudent> Students(RecordSession session, long grading) =>
        session.Query(
            "SELECT id, student, status, points, out_of, late_days, late_off, entry FROM graded WHERE grading = $1 ORDER BY place",
            row => new GradedStudent(
                row.TextOrNull(1),
                row.Text(2),
                row.PointsOrNull(3),
                row.PointsOrNull(4),
                row.WholeOrNull(5),
                row.PointsOrNull(6),
                Answers(session, row.Number(0)),
                row.UnpackedOrNull(7)
            ),
            grading
        );

    private static List<RecordedAnswer> Answers(RecordSession session, long graded) =>
        session.Query(
            "SELECT answer.place, outcome, answer.points, out_of, misconception, near_miss, as_graded, reason FROM answer LEFT JOIN correction ON correction.graded = answer.graded AND correction.place = answer.place WHERE answer.graded = $1 ORDER BY answer.place",
            row => new RecordedAnswer(
                row.Whole(0),
                row.Text(1),
                row.Points(2),
                row.Points(3),
                row.TextOrNull(4),
                row.TextOrNull(5),
                row.PointsOrNull(6) is { } asGraded ? new(asGraded, row.TextOrNull(7)) : null
            ),
            graded
        );

    private static List<ReturnedEntry> Files(RecordSession session, long grading) =>
        session.Query(
            "SELECT student, sha256, entry FROM returned_file WHERE grading = $1 ORDER BY place",
            row => new ReturnedEntry(row.TextOrNull(0), row.TextOrNull(1), row.Unpacked(2)),
            grading
        );

    private static List<TypedEntry> Typed(RecordSession session, long grading) =>
        session.Query(
            "SELECT student, entry FROM gradebook_point WHERE grading = $1 ORDER BY place",
            row => new TypedEntry(row.Text(0), row.Unpacked(1)),
            grading
        );

    /// <summary>The grading that stood before.</summary>
    private sealed record Before(int Number, string Digest, long Id);
}
