using System.Globalization;
using ClassKit.Content;
using ClassKit.Exercises;
using ClassKit.Grading;

namespace ClassKit.UseCases;

/// <summary>Grades a class again under a changed marking scheme or corrected keys, and says who changes and why before anything is written.</summary>
public static class RegradeClass
{
    /// <summary>Grades again and compares with the record.</summary>
    /// <param name="dealtFolder">The folder that <c>classkit deal</c> made.</param>
    /// <param name="returned">A folder or zip.</param>
    /// <param name="graded">The folder of the earlier grading, with its grades.json and perhaps corrections.csv.</param>
    /// <param name="marking">A marking scheme in place of the dealt one; null for that.</param>
    /// <param name="lesson">A lesson or bank whose exercises replace the dealt ones of the same ids; null for those.</param>
    /// <param name="corrections">The instructor's table of corrections; null for none.</param>
    /// <param name="due">When the work was due, and on whose clocks.</param>
    /// <param name="takeOver">True to take points typed into the gradebook over into the table of corrections.</param>
    public static Produced Make(string dealtFolder, string returned, string graded, string? marking, string? lesson, string? corrections, Deadline due, bool takeOver = false)
    {
        var earlier = GradedFolder.Read(graded);
        if (!earlier.Succeeded) return Produced.Nothing(earlier.Problems);
        var dealt = Changed(DealtFolder.Read(dealtFolder), marking, lesson);
        if (!dealt.Succeeded) return Produced.Nothing(dealt.Problems);
        var settled = due.Settle(dealt.Model);
        if (!settled.Succeeded) return Produced.Nothing(settled.Problems);
        var gradebook = new EarlierGradebook(graded, takeOver);
        var grades = GradeClass.Grade(dealt.Model, returned, corrections, settled.Model.Moment, gradebook, earlier.Model.Judging);
        return grades.Succeeded
            ? GradeClass.Make(grades.Model) with { Notes = [.. settled.Model.Notes, .. JudgeWords.Differences(earlier.Model.Judging, grades.Model), .. Lines(GradeComparison.Between(earlier.Model, grades.Model)), .. TypedPointsWords.Of(grades.Model)], Additions = GradeClass.Additions(grades.Model, corrections, gradebook) }
            : Produced.Nothing(grades.Problems);
    }

    private static Reading<DealtClass> Changed(Reading<DealtClass> dealt, string? marking, string? lesson)
    {
        if (dealt.Succeeded && marking is not null)
        {
            var scheme = MarkingSchemeReader.Read(marking);
            dealt = scheme.Succeeded ? new(dealt.Model with { Marking = scheme.Model }, []) : new(null, scheme.Problems);
        }
        if (!dealt.Succeeded || lesson is null) return dealt;

        var ids = dealt.Model.Exercises.Select(exercise => exercise.Id).ToList();
        var set = PracticeSet.Read(lesson, SetWish.None with { Exercises = ids }, dealt.Model.Seed);
        if (!set.Succeeded) return new(null, set.Problems);
        var (rekeyed, problems) = Rekeying.Apply(dealt.Model, set.Model.Exercises);
        return new(rekeyed, [.. problems.Select(problem => new Diagnostic(
            lesson, null, problem, "Change keys, tolerances, points, misconceptions and words only; for other givens or parts deal anew."))]);
    }

    private static IEnumerable<string> Lines(IReadOnlyList<GradeChange> changes)
    {
        yield return changes.Count switch
        {
            0 => "Nobody's points or outcomes change.",
            1 => "One student changes:",
            _ => $"{changes.Count} students change:",
        };
        foreach (var change in changes)
        {
            yield return $"{change.Student.Shown}: {Of(change.Before)} → {Of(change.Now)}{string.Concat(change.Why.Select(why => $"; {why}"))}";
            foreach (var alike in change.Answers.GroupBy(answer => string.Join("; ", answer.Why)))
                yield return $"  {alike.Key}: {string.Join(", ", alike.Select(Of))}";
        }
    }

    private static string Of(AnswerChange change)
    {
        var before = change.Before is { } points ? Number(points) : "–";
        return $"{change.Answer.Exercise.Id}.{change.Answer.Part.Id} {before} → {Number(change.Answer.Points)}";
    }

    private static string Of((decimal Points, decimal OutOf) total) => $"{Number(total.Points)} of {Number(total.OutOf)}";

    private static string Number(decimal points) => points.ToString("0.##", CultureInfo.InvariantCulture);
}
