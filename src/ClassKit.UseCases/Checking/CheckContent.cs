using ClassKit.Content;
using ClassKit.Exercises;
using ClassKit.Lessons;

namespace ClassKit.UseCases;

/// <summary>Checks authored content: every problem with its place.</summary>
public static class CheckContent
{
    /// <summary>How many students each exercise is dealt to on trial: a class of usual size.</summary>
    private const int TrialStudents = 30;

    /// <summary>Checks lessons, rubrics, profiles and rosters, and that every exercise of a lesson can be dealt to a class.</summary>
    public static ContentCheck Check(IEnumerable<string> paths)
    {
        var check = ContentChecker.Check(paths);
        return check.Problems.Count > 0
            ? check
            : check with { Problems = [.. check.Items.Where(item => item.Kind == ContentKind.Lesson).SelectMany(item => Undealable(item.Path))] };
    }

    private static IEnumerable<Diagnostic> Undealable(string path) =>
        LessonReader.Read(path).Model is { } lesson ? Undealable(path, lesson) : [];

    private static IEnumerable<Diagnostic> Undealable(string path, Lesson lesson)
    {
        if (PracticeLayout.FirstNameClash(lesson.Exercises) is { } clash)
            return [new(path, null, $"Two cells of the practice workbook would both be named {clash}", "Rename an exercise, a given or a part.")];
        var roster = new Roster("trial", [.. Enumerable.Range(1, TrialStudents).Select(number => new Student($"trial-{number}", "Trial"))]);
        return Dealer.Deal(lesson.Id, lesson.Title, lesson.Exercises, lesson.Marking, roster, DealPractice.DefaultSeed).Problems
            .Select(problem => new Diagnostic(path, null, "An exercise cannot be dealt", problem));
    }
}
