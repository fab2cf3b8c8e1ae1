using ClassKit.Exercises;

namespace ClassKit.Grading;

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
        foreach (var student in grades.Students)
        {
            var wrong = IntegrityFacts.Wrong(student).Where(answer => answer.Value.IsNumber).ToList();
            foreach (var other in grades.Dealt.Students.Where(other => other != student.Student))
            {
                var fitting = wrong.Where(answer => Fits(answer, other)).ToList();
                var expected = fitting.Aggregate((double)others * grades.Students.Count, (product, answer) =>
                    product * grades.Dealt.Students.Count(mate => mate != student.Student && Fits(answer, mate)) / others);
                if (fitting.Count < 2 || expected > IntegrityFacts.Line) continue;
                yield return (student.Student.Student, new(
                    FlagCodes.FitsAnotherVariant,
                    $"{fitting.Count} answers that are wrong for the numbers dealt to {student.Student.Student.Name} are right for those dealt to {other.Student.Name}: {IntegrityFacts.Parts(fitting.Select(answer => (answer.Exercise.Id, answer.Part.Id)))}. Chance alone brings this about {IntegrityFacts.Chance(expected)}."));
            }
        }
    }

    private static bool Fits(AnswerGrade answer, DealtStudent other) =>
        other.Answers.FirstOrDefault(dealt => dealt.Exercise == answer.Exercise.Id && dealt.Part == answer.Part.Id) is { } dealt
        && AsNumber(answer) is { } number && answer.Part.Tolerance.Accepts(dealt.Expected, number);

    private static double? AsNumber(AnswerGrade answer) => answer.Value is { IsNumber: true, Number: var number } ? number : null;
}
