using ClassKit.Exercises.Dealing;
using ClassKit.Records.Deals;
using ClassKit.UseCases.Dealing;

namespace ClassKit.UseCases.Recording;

/// <summary>A deal taken apart into what the record keeps, and put together again.</summary>
internal static class DealParts
{
    private const string Students = "students";

    public static RecordedDeal Of(DealtClass dealt)
    {
        var document = PlainJson.Read(DealtJson.Write(dealt));
        var seats = PlainJson.Take(document, Students);
        return new(
            dealt.Identity!.Digest,
            dealt.Identity.Code,
            dealt.Lesson,
            dealt.LessonTitle,
            PlainJson.Write(document),
            [.. dealt.Exercises.SelectMany(exercise => exercise.Parts.Select(part => new DealPart(exercise.Id, part.Id, exercise.Skill)))],
            [.. dealt.Students.Zip(seats, (seat, entry) => new DealSeat(seat.Who.Id, PlainJson.Write(entry)))]
        )
        {
            Replaces = dealt.Replaces?.Digest,
        };
    }

    /// <summary>What was dealt to all who are still on record.</summary>
    public static DealtClass Model(RecordedDeal deal)
    {
        var document = PlainJson.Read(deal.Frozen);
        PlainJson.Put(document, Students, deal.Seats.Select(seat => seat.Entry));
        return DealtJson.Read(deal.Code, PlainJson.Write(document)) is { Succeeded: true, Model: var dealt }
            ? dealt
            : throw new InvalidDataException($"deal {deal.Code} cannot be read back");
    }
}
