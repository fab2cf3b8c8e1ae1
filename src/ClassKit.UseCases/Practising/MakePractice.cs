using ClassKit.Content.Diagnostics;
using ClassKit.Exercises.Cohorts;
using ClassKit.Exercises.Dealing;
using ClassKit.Exercises.Identity;
using ClassKit.UseCases.Dealing;
using ClassKit.UseCases.Running;

namespace ClassKit.UseCases.Practising;

/// <summary>Makes practice that checks itself: for anyone, or for each student.</summary>
public static class MakePractice
{
    /// <summary>The kind of folder that its files go into; see <see cref="PracticeFiles"/>.</summary>
    public const string Kind = "practice";

    /// <summary>Somebody who wants to practise.</summary>
    private static readonly Roster Anyone = new("", [new("practice", "")]);

    /// <summary>Draws the numbers.</summary>
    /// <returns>The practice, or why there is none.</returns>
    /// <exception cref="OperationCanceledException">The run was stopped.</exception>
    public static Reading<PracticeMade> Run(PracticeRequest request, Run run)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(run);
        run.Begin(RunStep.DrawingVariants);
        var set = request.Set;
        var result = Dealer.Deal(set.Id, set.Title, set.Exercises, set.Marking, request.Roster ?? Anyone, request.Seed, new(DealPurpose.Practice, request.Avoid), run.Draws());
        return result.Class is { } dealt ? new(new(request, dealt, result.Shared), []) : new(null, PracticeSet.Undealt(set.Source, result));
    }
}
