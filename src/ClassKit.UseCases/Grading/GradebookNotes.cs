using ClassKit.Grading.Results;
using ClassKit.Notes;

namespace ClassKit.UseCases.Grading;

/// <summary>What an instructor should know of points typed into a gradebook.</summary>
internal static class GradebookNotes
{
    public static IEnumerable<Note> Of(ClassGrades grades)
    {
        foreach (var gradebook in grades.UnreadGradebooks)
            yield return new Note.Unread(gradebook);
        if (grades.TakenOver.Count > 0)
            yield return new Note.TakenOver(grades.TakenOver, grades.Dealt.Exercises);
        if (grades.Waiting.Count > 0)
            yield return new Note.Waiting(grades.Waiting, grades.Dealt.Exercises);
    }
}
