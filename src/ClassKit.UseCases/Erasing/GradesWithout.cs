using ClassKit.Exercises.Cohorts;
using ClassKit.Grading.Results;
using ClassKit.UseCases.Grading.Facts;

namespace ClassKit.UseCases.Erasing;

/// <summary>Grades without students who were erased, and without what is said of them beside others.</summary>
internal static class GradesWithout
{
    /// <summary>The grades of the others.</summary>
    /// <param name="grades">Of the whole class.</param>
    /// <param name="erased">The ids of those who were erased.</param>
    public static ClassGrades Of(ClassGrades grades, IReadOnlySet<string> erased)
    {
        if (erased.Count == 0)
            return grades;
        var gone = grades
            .Students.Select(student => student.Who)
            .Where(who => erased.Contains(who.Id))
            .Select(who => new SoughtStudent(who, []))
            .ToList();
        bool IsNamed(string text) => gone.Exists(who => who.IsMeantBy(text));
        return grades with
        {
            Dealt = grades.Dealt with { Students = [.. grades.Dealt.Students.Where(seat => !erased.Contains(seat.Who.Id))] },
            Students =
            [
                .. grades
                    .Students.Where(student => !erased.Contains(student.Who.Id))
                    .Select(student =>
                        student with
                        {
                            Flags = [.. student.Flags.Where(flag => !NamedInJson.Any(FlagShapes.All.Entry(flag), IsNamed))],
                        }
                    ),
            ],
            Files = [.. grades.Files.Where(file => file.Student is { } owner ? !erased.Contains(owner.Id) : !IsNamed(file.File))],
            Waiting = [.. grades.Waiting.Where(typed => !erased.Contains(typed.Student.Id))],
            TakenOver = [.. grades.TakenOver.Where(typed => !erased.Contains(typed.Student.Id))],
            Judging = grades.Judging is { } judging
                ? judging with
                {
                    Choices = [.. judging.Choices.Where(choice => !erased.Contains(choice.Student))],
                }
                : null,
        };
    }
}
