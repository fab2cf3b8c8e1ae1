using ClassKit.Exercises.Cohorts;
using ClassKit.Grading.Findings;
using ClassKit.Grading.Results;

namespace ClassKit.Grading.Integrity;

/// <summary>Wrong numbers that would be right for the numbers dealt to somebody else.</summary>
/// <remarks>
/// Chance: if wrong numbers have nothing to do with the class, a number fits a given classmate as often as it fits classmates in general; the
/// parts are independent, since numbers carried on from an own slip are not counted. The expected number of classmates who fit all of them is
/// summed over the class, so that the rate speaks of classes and not of pairs that were picked after looking.
/// </remarks>
internal static class FittingElsewhere
{
    public static IEnumerable<(Student Student, Flag Flag)> In(ClassGrades grades)
    {
        var others = grades.Dealt.Students.Count - 1;
        var dealt = grades.Dealt.Students.SelectMany((seat, at) => seat.Variants.SelectMany(variant => variant.Answers.Select(answer => (At: at, Seat: seat, Exercise: variant.Exercise.Id, Part: answer.Key, Expected: answer.Value))))
            .ToLookup(answer => (answer.Exercise, answer.Part));
        foreach (var student in grades.Students)
        {
            var fits = IntegrityFacts.Wrong(student).Where(answer => answer.Value.IsNumber && answer.Part.IsNumber).SelectMany(answer =>
            {
                var mates = dealt[(answer.Exercise.Id, answer.Part.Id)]
                    .Where(mate => mate.Seat.Who.Id != student.Who.Id && answer.Part.Tolerance.Accepts(mate.Expected, answer.Value.Number)).ToList();
                return mates.Select(mate => (mate.At, mate.Seat, Answer: answer, Chance: (double)mates.Count / others));
            });
            foreach (var fitting in fits.GroupBy(fit => fit.At).OrderBy(mate => mate.Key).Select(mate => mate.ToList()))
            {
                var expected = fitting.Aggregate((double)others * grades.Students.Count, (product, fit) => product * fit.Chance);
                if (fitting.Count < 2 || expected > IntegrityFacts.Line) continue;
                yield return (student.Who, new Flag.FitsAnotherVariant(
                    student.Who, fitting[0].Seat.Who, [.. fitting.Select(fit => (fit.Answer.Exercise.Id, fit.Answer.Part.Id))], expected));
            }
        }
    }
}
