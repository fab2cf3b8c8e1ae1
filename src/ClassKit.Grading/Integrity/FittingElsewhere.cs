using ClassKit.Exercises.Cohorts;
using ClassKit.Grading.Findings;
using ClassKit.Grading.Results;

namespace ClassKit.Grading.Integrity;

/// <summary>Wrong numbers that would be right for the numbers dealt to somebody else.</summary>
/// <remarks>
/// Chance: if wrong numbers have nothing to do with the class, a number fits a given classmate as often as it fits classmates in general;
/// the parts are independent, since numbers carried on from an own slip are not counted. The expected number of classmates who fit all of
/// them is summed over the class, so that the rate speaks of classes and not of pairs that were picked after looking.
/// </remarks>
internal static class FittingElsewhere
{
    public static IEnumerable<(Student Student, Flag Flag)> In(ClassGrades grades)
    {
        var seats = grades.Dealt.Students;
        var others = seats.Count - 1;
        var places = seats.Index().ToDictionary(seat => seat.Item.Who.Id, seat => seat.Index);
        var expecting = new Dictionary<(string, string), ExpectedNumbers>();
        foreach (var student in grades.Students)
        {
            var self = places.GetValueOrDefault(student.Who.Id, -1);
            var wrong = IntegrityFacts
                .Wrong(student)
                .Where(answer => answer.Value.IsNumber && answer.Part.IsNumber)
                .Select(answer => (Answer: answer, Numbers: Expecting(answer)))
                .Select(one => (one.Answer, Fits: one.Numbers.Accepting(one.Answer.Value.Number)))
                .Select(one => (one.Answer, one.Fits, Chance: (double)one.Fits.Count(at => at != self) / others))
                .Where(one => one.Chance > 0)
                .ToList();

            // No mate can be rarer than if all numbers fitted.
            if (
                wrong.Count < 2
                || wrong.Aggregate(others * (double)grades.Students.Count, (product, one) => product * one.Chance) > IntegrityFacts.Line
            )
                continue;
            var fits = wrong.SelectMany(one => one.Fits.Where(at => at != self).Select(at => (At: at, one.Answer, one.Chance)));
            foreach (var fitting in fits.GroupBy(fit => fit.At).OrderBy(mate => mate.Key).Select(mate => mate.ToList()))
            {
                var expected = fitting.Aggregate((double)others * grades.Students.Count, (product, fit) => product * fit.Chance);
                if (fitting.Count < 2 || expected > IntegrityFacts.Line)
                    continue;
                yield return (
                    student.Who,
                    new Flag.FitsAnotherVariant(
                        student.Who,
                        seats[fitting[0].At].Who,
                        [.. fitting.Select(fit => (fit.Answer.Exercise.Id, fit.Answer.Part.Id))],
                        expected
                    )
                );
            }
        }

        ExpectedNumbers Expecting(AnswerGrade answer)
        {
            var key = (answer.Exercise.Id, answer.Part.Id);
            return expecting.TryGetValue(key, out var numbers) ? numbers : expecting[key] = new(seats, answer.Exercise.Id, answer.Part);
        }
    }
}
