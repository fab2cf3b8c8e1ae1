namespace ClassKit.Records.Deals;

/// <summary>A deal as it goes into the record and comes out of it.</summary>
/// <param name="Digest">Its identity, 64 hexadecimal digits.</param>
/// <param name="Code">The short form.</param>
/// <param name="Lesson">The lesson's id.</param>
/// <param name="Title">What was dealt.</param>
/// <param name="Frozen">What dealt.json holds besides students, as JSON.</param>
/// <param name="Parts">Every part that was asked, in workbook order.</param>
/// <param name="Seats">What each student got, as JSON, in roster order. Those of erased students are gone.</param>
public sealed record RecordedDeal(
    string Digest,
    string Code,
    string Lesson,
    string Title,
    string Frozen,
    IReadOnlyList<DealPart> Parts,
    IReadOnlyList<DealSeat> Seats
)
{
    /// <summary>The identity of the deal that it is sat again for; null for a first sitting.</summary>
    public string? Replaces { get; init; }
}

/// <summary>A part that was asked.</summary>
/// <param name="Exercise">The exercise's id.</param>
/// <param name="Part">The part's id within it.</param>
/// <param name="Skill">What it practises.</param>
public sealed record DealPart(string Exercise, string Part, string Skill);

/// <summary>What a student got.</summary>
/// <param name="Student">The student's id.</param>
/// <param name="Entry">As JSON.</param>
public sealed record DealSeat(string Student, string Entry);
