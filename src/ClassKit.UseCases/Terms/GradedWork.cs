using ClassKit.Content.Classes;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.Terms;
using ClassKit.Grading.Results;
using ClassKit.Notes;
using ClassKit.Terms.Marks;
using ClassKit.UseCases.Grading;

namespace ClassKit.UseCases.Terms;

/// <summary>What graded folders say of a calculation set.</summary>
/// <param name="OutOf">The points possible.</param>
/// <param name="Attempts">Every student's marked sittings.</param>
internal sealed record GradedWork(decimal OutOf, IReadOnlyList<ClassKit.Terms.Marks.Attempt> Attempts)
{
    public static GradedWork Read(PlannedWork work, TermPlan plan, List<Diagnostic> problems, List<Note> notes)
    {
        List<ClassKit.Terms.Marks.Attempt> attempts = [];
        var roster = plan.Class.Students.Select(student => student.Id).ToHashSet();
        foreach (var (index, folder) in work.Graded.Index())
        {
            var grades = GradedFolder.Read(folder, dealt: null);
            problems.AddRange(grades.Problems);
            if (!grades.Succeeded) continue;
            foreach (var stranger in grades.Model.Students.Where(student => !roster.Contains(student.Who.Id)))
                problems.Add(new(plan.Path, work.Line, $"`{folder}` has a student `{stranger.Who.Id}`, who is not on the roster", "Name the folder of this class, or add the student to the roster."));
            foreach (var student in grades.Model.Students.Where(student => roster.Contains(student.Who.Id) && student.OutOf > 0 && student.HasPoints))
            {
                if (student.Points > student.OutOf || student.Points < 0) problems.Add(new(Path.Combine(folder, GradesJson.FileName), null, $"`{student.Who.Id}` has {student.Points} of {student.OutOf} points", "Grade again: nobody earns more than is possible."));
                else attempts.Add(new(student.Who.Id, work.Title, index + 1, Mark.Of(student.Points, student.OutOf) with { Lateness = Of(student.Late) }));
            }
            var undecided = grades.Model.Students.Sum(student => student.Answers.Count(answer => answer.IsUndecided));
            if (undecided > 0) notes.Add(new Note.Undecided(work.Title, undecided, CorrectionsReader.FileName));
        }
        return new(attempts.Select(attempt => attempt.Mark.OutOf).DefaultIfEmpty(1).Max(), attempts);
    }

    private static Lateness Of(Late? late) => late switch { null => Lateness.InTime, { Off: > 0 } => Lateness.LateAndSettled, _ => Lateness.Late };
}
