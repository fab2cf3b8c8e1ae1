using ClassKit.Content.Sources;
using ClassKit.Content.Terms;
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
public sealed record TourTermRequest(
    TermPlan Plan, PracticeSet Second, ReturnedFiles Returned, Source Paper, IReadOnlyList<string> Again, ReturnedFiles ReturnedAgain, ReturnedFiles Observed);
