using ClassKit.Records.Classes;
using ClassKit.Records.Storage;

namespace ClassKit.Records.Deals;

/// <summary>What was dealt.</summary>
public static class DealRegister
{
    /// <summary>The row of the deal with an identity, or null.</summary>
    internal static long? Find(RecordSession session, string digest) => session.Number("SELECT id FROM deal WHERE digest = $1", digest);

    /// <summary>Puts a deal on record; of one that is there already, the students who came to it since.</summary>
    public static void Put(WritingSession session, RecordedClass named, RecordedDeal deal)
    {
        ArgumentNullException.ThrowIfNull(session);
        ArgumentNullException.ThrowIfNull(named);
        ArgumentNullException.ThrowIfNull(deal);
        var id = Find(session, deal.Digest) ?? Begin(session, named, deal);
        foreach (var seat in deal.Seats)
        {
            if (session.Number("SELECT place FROM deal_seat WHERE deal = $1 AND student = $2", id, seat.Student) is null)
                session.Run(
                    "INSERT INTO deal_seat (deal, place, student, entry) VALUES ($1, (SELECT coalesce(max(place), 0) + 1 FROM deal_seat WHERE deal = $1), $2, $3)",
                    id,
                    seat.Student,
                    Packed.Of(seat.Entry)
                );
        }
    }

    /// <summary>A deal as it is on record, or null.</summary>
    public static RecordedDeal? Read(RecordSession session, string digest)
    {
        ArgumentNullException.ThrowIfNull(session);
        return session.One(
            "SELECT code, lesson, title, frozen, id, replaces FROM deal WHERE digest = $1",
            row => new RecordedDeal(
                digest,
                row.Text(0),
                row.Text(1),
                row.Text(2),
                row.Unpacked(3),
                session.Query(
                    "SELECT exercise, part, skill FROM deal_part WHERE deal = $1 ORDER BY place",
                    part => new DealPart(part.Text(0), part.Text(1), part.Text(2)),
                    row.Number(4)
                ),
                session.Query(
                    "SELECT student, entry FROM deal_seat WHERE deal = $1 ORDER BY place",
                    seat => new DealSeat(seat.Text(0), seat.Unpacked(1)),
                    row.Number(4)
                )
            )
            {
                Replaces = row.TextOrNull(5),
            },
            digest
        );
    }

    /// <summary>The identities of what a student was dealt, in the order in which it went on record.</summary>
    public static IReadOnlyList<string> OfStudent(RecordSession session, string student)
    {
        ArgumentNullException.ThrowIfNull(session);
        return session.Query(
            "SELECT digest FROM deal JOIN deal_seat ON deal_seat.deal = deal.id WHERE student = $1 ORDER BY deal.id",
            row => row.Text(0),
            student
        );
    }

    private static long Begin(WritingSession session, RecordedClass named, RecordedDeal deal)
    {
        var id = session.Insert(
            "INSERT INTO deal (digest, code, class, lesson, title, frozen, change, replaces) VALUES ($1, $2, $3, $4, $5, $6, $7, $8)",
            deal.Digest,
            deal.Code,
            named.Id,
            deal.Lesson,
            deal.Title,
            Packed.Of(deal.Frozen),
            session.ChangeId,
            deal.Replaces
        );
        foreach (var (place, part) in deal.Parts.Index())
            session.Run(
                "INSERT INTO deal_part (deal, place, exercise, part, skill) VALUES ($1, $2, $3, $4, $5)",
                id,
                place,
                part.Exercise,
                part.Part,
                part.Skill
            );
        return id;
    }
}
