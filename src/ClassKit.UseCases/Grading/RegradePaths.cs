using ClassKit.Content.Diagnostics;
using ClassKit.Content.Rubrics;
using ClassKit.Exercises.Choosing;
using ClassKit.Exercises.Dealing;
using ClassKit.UseCases.Dealing;
using ClassKit.UseCases.Output;
using ClassKit.Wording.Dealing;

namespace ClassKit.UseCases.Grading;

/// <summary>Where what grading again takes lies on disk.</summary>
/// <param name="Grading">What is graded; its folder of grades is the one of the earlier grading.</param>
public sealed record RegradePaths(GradePaths Grading)
{
    /// <summary>A marking scheme in place of the dealt one; null for that.</summary>
    public string? Marking { get; init; }

    /// <summary>A lesson or bank whose exercises replace the dealt ones of the same ids; null for those.</summary>
    public string? Keys { get; init; }

    /// <summary>All that grading again takes, or everything that is wrong with it.</summary>
    public Reading<RegradeRequest> Read()
    {
        var asDealt = DealtFolder.Read(Grading.Dealt);
        var earlier = GradedFolder.Read(Grading.Graded ?? "", asDealt.Model);
        if (!earlier.Succeeded)
            return new(null, earlier.Problems);
        var dealt = Changed(asDealt);
        var again = dealt.Succeeded ? Grading.Read(dealt.Model, earlier.Model, []) : new(null, dealt.Problems);
        return again.Succeeded ? new(new(again.Model, earlier.Model), []) : new(null, again.Problems);
    }

    /// <summary>The files of the class graded again.</summary>
    public Produced Write(RegradeResult regraded)
    {
        ArgumentNullException.ThrowIfNull(regraded);
        return Grading.Write(regraded.Now) with { Notes = RegradeNotes.Of(regraded) };
    }

    private Reading<DealtClass> Changed(Reading<DealtClass> dealt)
    {
        if (dealt.Succeeded && Marking is not null)
        {
            var scheme = MarkingSchemeReader.Read(Marking);
            dealt = scheme.Succeeded ? new(dealt.Model with { Marking = scheme.Model }, []) : new(null, scheme.Problems);
        }
        if (!dealt.Succeeded || Keys is null)
            return dealt;

        var ids = dealt.Model.Exercises.Select(exercise => exercise.Id).ToList();
        var set = PracticeSet.Read(Keys, SetWish.None with { Exercises = ids }, dealt.Model.Seed);
        if (!set.Succeeded)
            return new(null, set.Problems);
        var (rekeyed, problems) = Rekeying.Apply(dealt.Model, set.Model.Exercises);
        return new(
            rekeyed,
            [
                .. problems.Select(problem => new Diagnostic(
                    Keys,
                    null,
                    RekeyProblemWords.Of(problem),
                    "Change keys, tolerances, points, misconceptions and words only; for other givens or parts deal anew."
                )),
            ]
        );
    }
}
