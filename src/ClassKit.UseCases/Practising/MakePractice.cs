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
        var leftOut = set.Exercises.Where(request.Avoid.GivesAway).Select(exercise => new NotPractised(exercise, GivesAway: true)).ToList();
        // One exercise with few variants must not cost the practice of all others.
        while (set.Exercises.Except(leftOut.Select(one => one.Exercise)).ToList() is { Count: > 0 } left)
        {
            var result = Dealer.Deal(
                set.Id,
                set.Title,
                left,
                set.Marking,
                (request.Roster ?? Anyone) with
                {
                    Paper = request.Paper ?? request.Roster?.Paper,
                },
                request.Seed,
                new(DealPurpose.Practice, request.Avoid),
                run.Draws()
            );
            if (result.Class is { } dealt)
                return new(new(request, dealt, result.Shared, leftOut), []);
            if (result.Problems.Any(problem => problem.Because is not null))
                return new(null, PracticeSet.Undealt(set.Source, result));
            leftOut.AddRange(result.Problems.Select(problem => new NotPractised(problem.Exercise, GivesAway: false)));
        }

        return new(
            null,
            [
                new(
                    set.Source,
                    null,
                    "Nothing is left to practise",
                    "Every exercise of it is still to be handed in, and practice would show its answers. Practise others, or these after grading."
                ),
            ]
        );
    }
}
