using ClassKit.Records.Classes;
using ClassKit.Records.Deals;
using ClassKit.Records.Storage;
using ClassKit.Terms.Work;

namespace ClassKit.Records.Terms;

/// <summary>Terms of classes, what was set in them, and which deal was sat for what.</summary>
public static class TermRegister
{
    private const string Terms = "SELECT term.id, class.id, class.name, title, begins, ends FROM term JOIN class ON class.id = term.class ";

    /// <summary>Every term of a class, the earliest put on record first.</summary>
    public static IReadOnlyList<RecordedTerm> Of(RecordSession session, RecordedClass named)
    {
        ArgumentNullException.ThrowIfNull(session);
        ArgumentNullException.ThrowIfNull(named);
        return session.Query(Terms + "WHERE class.id = $1 ORDER BY term.id", Term, named.Id);
    }

    /// <summary>The term of a title, or null.</summary>
    public static RecordedTerm? Find(RecordSession session, RecordedClass named, string title)
    {
        ArgumentNullException.ThrowIfNull(session);
        ArgumentNullException.ThrowIfNull(named);
        return session.One(Terms + "WHERE class.id = $1 AND title = $2", Term, named.Id, title);
    }

    /// <summary>Puts a term on record; of one that is there, the days that are named.</summary>
    public static RecordedTerm Put(
        WritingSession session,
        RecordedClass named,
        string title,
        DateOnly? begins = null,
        DateOnly? ends = null
    )
    {
        ArgumentNullException.ThrowIfNull(session);
        ArgumentNullException.ThrowIfNull(named);
        session.Run(
            "INSERT INTO term (class, title, begins, ends) VALUES ($1, $2, $3, $4) ON CONFLICT DO UPDATE SET begins = coalesce($3, begins), ends = coalesce($4, ends)",
            named.Id,
            title,
            begins,
            ends
        );
        return Find(session, named, title)!;
    }

    /// <summary>The works of a term, in order.</summary>
    public static IReadOnlyList<RecordedWork> Works(RecordSession session, RecordedTerm term)
    {
        ArgumentNullException.ThrowIfNull(session);
        ArgumentNullException.ThrowIfNull(term);
        return session.Query(
            "SELECT id, place, title, kind, category, out_of, assigned, due FROM work WHERE term = $1 ORDER BY place, id",
            Work,
            term.Id
        );
    }

    /// <summary>Puts a work on record; one of that title becomes this.</summary>
    public static RecordedWork PutWork(
        WritingSession session,
        RecordedTerm term,
        int place,
        Assignment assignment,
        DateOnly? assigned = null,
        DateOnly? due = null
    )
    {
        ArgumentNullException.ThrowIfNull(session);
        ArgumentNullException.ThrowIfNull(term);
        ArgumentNullException.ThrowIfNull(assignment);
        session.Run(
            """
            INSERT INTO work (term, place, title, kind, category, out_of, assigned, due) VALUES ($1, $2, $3, $4, $5, $6, $7, $8)
            ON CONFLICT DO UPDATE SET place = $2, kind = $4, category = $5, out_of = $6, assigned = coalesce($7, assigned), due = coalesce($8, due)
            """,
            term.Id,
            place,
            assignment.Title,
            Words.Of(assignment.Kind),
            assignment.Category,
            assignment.OutOf,
            assigned,
            due
        );
        return session.One(
            "SELECT id, place, title, kind, category, out_of, assigned, due FROM work WHERE term = $1 AND title = $2",
            Work,
            term.Id,
            assignment.Title
        )!;
    }

    /// <summary>Says that a deal was sat for a work.</summary>
    /// <returns>False if the deal is not on record.</returns>
    public static bool Sit(WritingSession session, RecordedWork work, int sitting, string deal)
    {
        ArgumentNullException.ThrowIfNull(session);
        ArgumentNullException.ThrowIfNull(work);
        if (DealRegister.Find(session, deal) is not { } id)
            return false;
        session.Run(
            "INSERT INTO work_deal (work, sitting, deal) VALUES ($1, $2, $3) ON CONFLICT DO UPDATE SET deal = $3",
            work.Id,
            sitting,
            id
        );
        return true;
    }

    /// <summary>Takes away that a work was sat more often than so many times.</summary>
    /// <returns>How many sittings went.</returns>
    public static int TakeAwaySittingsAfter(WritingSession session, RecordedWork work, int sittings)
    {
        ArgumentNullException.ThrowIfNull(session);
        ArgumentNullException.ThrowIfNull(work);
        return session.Run("DELETE FROM work_deal WHERE work = $1 AND sitting > $2", work.Id, sittings);
    }

    /// <summary>The deals that were sat for a work, by sitting.</summary>
    public static IReadOnlyList<(int Sitting, string Deal)> Sittings(RecordSession session, RecordedWork work)
    {
        ArgumentNullException.ThrowIfNull(session);
        ArgumentNullException.ThrowIfNull(work);
        return session.Query(
            "SELECT sitting, digest FROM work_deal JOIN deal ON deal.id = work_deal.deal WHERE work = $1 ORDER BY sitting",
            row => (row.Whole(0), row.Text(1)),
            work.Id
        );
    }

    private static RecordedTerm Term(Row row) =>
        new(row.Number(0), new(row.Number(1), row.Text(2)), row.Text(3), row.DayOrNull(4), row.DayOrNull(5));

    private static RecordedWork Work(Row row) =>
        new(
            row.Number(0),
            row.Whole(1),
            new(row.Text(2), row.Text(2), Words.Find<WorkKind>(row.Text(3)), row.Text(4), row.PointsOrNull(5)),
            row.DayOrNull(6),
            row.DayOrNull(7)
        );
}
