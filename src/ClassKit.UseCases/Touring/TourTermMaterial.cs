using ClassKit.Content.Sources;
using ClassKit.Content.Terms;
using ClassKit.Exercises.Choosing;
using ClassKit.Exercises.Cohorts;
using ClassKit.Exercises.Dealing;
using ClassKit.UseCases.Dealing;
using ClassKit.UseCases.Intake;

namespace ClassKit.UseCases.Touring;

/// <summary>What a term of the invented class takes beside the lesson's own set.</summary>
/// <param name="Plan">The term as it is written down: its rule, its bench work and its typed marks.</param>
/// <param name="Second">The exercises of the second calculation set.</param>
/// <param name="Returned">What came back of it.</param>
/// <param name="Paper">The workbook with the answers of those who worked on paper.</param>
/// <param name="Again">The ids of the students who sit it again.</param>
/// <param name="ReturnedAgain">What they handed in then.</param>
/// <param name="Observed">What the teams measured of the lesson's breads.</param>
public sealed record TourTermMaterial(
    TermPlan Plan,
    PracticeSet Second,
    ReturnedFiles Returned,
    Source Paper,
    IReadOnlyList<string> Again,
    ReturnedFiles ReturnedAgain,
    ReturnedFiles Observed
)
{
    /// <summary>What dealing the second set takes.</summary>
    /// <param name="roster">The class.</param>
    /// <param name="seed">Decides every draw.</param>
    public DealRequest ToDeal(Roster roster, ulong seed) => new(Second, roster, new(SetWish.None, IsSpread: false, seed));

    /// <summary>What dealing it again takes, to those who sit it again.</summary>
    /// <param name="roster">The class.</param>
    /// <param name="seed">Decides every draw.</param>
    /// <param name="first">The second set as it was dealt to the class.</param>
    public DealRequest ToDealAgain(Roster roster, ulong seed, DealtClass first)
    {
        ArgumentNullException.ThrowIfNull(roster);
        return ToDeal(roster with { Students = [.. roster.Students.Where(student => Again.Contains(student.Id))] }, seed) with
        {
            Replaces = first,
        };
    }
}
