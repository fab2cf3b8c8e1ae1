using ClassKit.Exercises.Choosing;
using ClassKit.Exercises.Cohorts;
using ClassKit.Exercises.Dealing;
using ClassKit.Notes;
using ClassKit.Terms.Difficulty;

namespace ClassKit.UseCases.Dealing;

/// <summary>What an instructor should know of a deal.</summary>
public static class DealNotes
{
    /// <summary>The notes.</summary>
    public static IReadOnlyList<Note> Of(DealMade deal)
    {
        ArgumentNullException.ThrowIfNull(deal);
        var (request, dealt) = (deal.Request, deal.Dealt);
        return
        [
            .. request.Roster.Origin is { IsPlain: false } origin ? [new Note.RosterUnderstood(origin)] : (IEnumerable<Note>)[],
            .. request.Earlier.Notes(dealt),
            .. deal.Spread is { } spread ? [new Note.SpreadOut(spread)]
            : request.Wish.Set.IsNone ? (IEnumerable<Note>)[]
            : [new Note.SetChosen(request.Set.Exercises)],
            .. Expected(request, dealt),
            new Note.Dealt(dealt.Students.Count, dealt.ExercisesOf(dealt.Students[0]).Count, request.Wish.Seed, DealtJson.FileName),
            .. dealt.Due is { } due && request.Wish.Due is not null ? [new Note.DueAsNamed(due)] : (IEnumerable<Note>)[],
            .. dealt.Replaces is { } replaced ? [new Note.Resit(replaced.Code, dealt.Students.Count)] : (IEnumerable<Note>)[],
            .. Sitting.Excused(request) is { Count: > 0 } excused ? [new Note.ExcusedFrom(excused)] : (IEnumerable<Note>)[],
            .. Astray(request, dealt),
            .. dealt.Students.Where(student => student.HasArrangement).ToList() is { Count: > 0 } arranged
                ? [new Note.Arranged(arranged)]
                : (IEnumerable<Note>)[],
            .. ClassPart.Of(dealt.Students.Count) is { Count: > 1 } parts
                ? [new Note.InParts(parts[0].Named(DealFiles.AnswerKey), parts[^1].Named(DealFiles.AnswerKey), parts.Count)]
                : (IEnumerable<Note>)[],
            .. deal.Shared.Select(variants => new Note.VariantsShared(variants)),
            .. Idle(dealt),
        ];
    }

    /// <summary>A misspelt name would leave nothing out, and nobody would see it.</summary>
    private static IEnumerable<Note> Astray(DealRequest request, DealtClass dealt)
    {
        var known = request.Set.Pool.Concat(dealt.Exercises).Select(exercise => exercise.Id).ToHashSet();
        return dealt
            .Students.Select(student =>
                (
                    student.Who,
                    Ids: request
                        .Roster.ArrangementOf(student.Who.Id)
                        .In(request.Set.Id, request.Set.Title)
                        .LeavesOut.Where(id => !known.Contains(id))
                        .ToList()
                )
            )
            .Where(one => one.Ids.Count > 0)
            .Select(one => new Note.LeavesOutNothing(one.Who, one.Ids));
    }

    /// <summary>
    /// What the first student's set can be expected to earn, by what earlier classes earned: where sets differ, they were chosen alike in
    /// it or are said not to be.
    /// </summary>
    private static IEnumerable<Note> Expected(DealRequest request, DealtClass dealt)
    {
        if (request.Past is not { } past)
            yield break;
        var set = SetDifficulty.Asked(dealt.ExercisesOf(dealt.Students[0]));
        yield return past.Expect(set, dealt.Cohort, dealt.Students.Count) is { } band
            ? new Note.Expected(band.Low, band.High, band.OutOf, band.Unknown, band.OfTheClass)
            : new Note.NothingExpected();
    }

    /// <summary>What the marking scheme's rule for totals has nothing to do.</summary>
    private static IEnumerable<Note> Idle(DealtClass dealt)
    {
        var exercises = dealt.ExercisesOf(dealt.Students[0]);
        if (dealt.Marking.Total.BestExercises is { } best && best >= exercises.Count)
            yield return new Note.AllExercisesCount(best, exercises.Count);
        if (dealt.Marking.Total.PointsAtMost is { } most && exercises.Sum(SetChooser.PointsOf) is var points && points <= most)
            yield return new Note.AllPointsCount(most, points);
    }
}
