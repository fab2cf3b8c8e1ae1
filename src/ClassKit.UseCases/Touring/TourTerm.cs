using ClassKit.Content.Diagnostics;
using ClassKit.Content.Terms;
using ClassKit.Grading.Results;
using ClassKit.Lessons.Packs;
using ClassKit.Notes;
using ClassKit.Terms.Work;
using ClassKit.UseCases.Dealing;
using ClassKit.UseCases.Grading;
using ClassKit.UseCases.Observing;
using ClassKit.UseCases.Output;
using ClassKit.UseCases.Papers;
using ClassKit.UseCases.Running;
using ClassKit.UseCases.Terms;

namespace ClassKit.UseCases.Touring;

/// <summary>
/// A term of the invented class: its second set with answers on paper and a resit, what its teams measured, and the grades of it all.
/// </summary>
/// <remarks>
/// The first two works of the term are the sets that the tour deals and grades, in place of the marks that are typed for them.
/// </remarks>
internal static class TourTerm
{
    public static Reading<TourTermMade> Run(TourTermMaterial material, TourRequest tour, LessonPack pack, ClassGrades first, Run run)
    {
        var second = DealPractice.Run(material.ToDeal(tour.Roster, tour.Seed), run);
        if (!second.Succeeded)
            return new(null, second.Problems);
        var paper = PaperFile.Read(material.Paper, second.Model.Dealt);
        if (!paper.Succeeded)
            return new(null, paper.Problems);
        var graded = GradeClass.Run(new(second.Model.Dealt, material.Returned) { Paper = paper.Model }, run);
        var resit = DealPractice.Run(material.ToDealAgain(tour.Roster, tour.Seed, second.Model.Dealt), run);
        if (!resit.Succeeded)
            return new(null, resit.Problems);
        var again = GradeClass.Run(new(resit.Model.Dealt, material.ReturnedAgain), run);
        var term = Assembled(material.Plan, first, graded.Grades, again.Grades);
        return term.Succeeded
            ? new(new(graded, resit.Model, again, DrawObservations.Of(pack, material.Observed, run), WeighTerm.Run(term.Model, run)), [])
            : new(null, term.Problems);
    }

    public static Produced Write(TourTermMade made)
    {
        var (weighed, observed, resit) = (
            WeighTerm.Write(made.Weighed),
            DrawObservations.Write(made.Observed),
            DealPaths.Write(made.Resit)
        );
        return new(
            [
                .. Tables(made.Second).Select(file => file.Below("second-set/graded")),
                .. resit.Files.Select(file => file.Below("resit/dealt")),
                .. Tables(made.Again).Select(file => file.Below("resit/graded")),
                .. observed.Files.Select(file => file.Below("observed")),
                .. weighed.Files.Select(file => file.Below("term")),
            ],
            [
                new Note.OfStep(TourStep.SecondSet),
                .. GradeNotes.Of(made.Second),
                new Note.OfStep(TourStep.Resit),
                .. resit.Notes,
                new Note.OfStep(TourStep.Measurements),
                .. observed.Notes,
                new Note.OfStep(TourStep.Term),
                .. weighed.Notes,
            ],
            []
        );
    }

    /// <summary>One set of pages about grading is enough to look at; of the others there is what other programs read.</summary>
    private static IEnumerable<OutputFile> Tables(GradeResult graded) =>
        GradeFiles.Of(graded).Where(file => file.Path is "grades.csv" or GradesJson.FileName);

    private static Reading<WeighRequest> Assembled(TermPlan plan, ClassGrades first, ClassGrades second, ClassGrades again)
    {
        Dictionary<string, (int, ClassGrades)[]> sat = new()
        {
            [plan.Works[0].Title] = [(1, first)],
            [plan.Works[1].Title] = [(1, second), (2, again)],
        };
        PlannedWork[] works =
        [
            .. plan.Works.Select(work =>
                sat.ContainsKey(work.Title) ? work with { Kind = WorkKind.CalculationSet, OutOf = null, Typed = [] } : work
            ),
        ];
        return TermAssembly.Of(plan with { Works = works }, (work, _, notes) =>
            GradedWork.Of(work, plan, sat.GetValueOrDefault(work.Title, []), notes)
        );
    }
}
