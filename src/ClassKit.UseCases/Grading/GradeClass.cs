using ClassKit.Exercises;
using ClassKit.Grading;
using ClassKit.Pages;
using ClassKit.Workbooks;

namespace ClassKit.UseCases;

/// <summary>Grades what a class returned: gradebook, tables, feedback pages and the class report.</summary>
public static class GradeClass
{
    /// <summary>The command, and the kind of its output folder.</summary>
    public const string Kind = "grade";

    /// <summary>Reads the dealt folder and the returned files and makes everything that grading makes.</summary>
    /// <param name="dealtFolder">The folder that <c>classkit deal</c> made.</param>
    /// <param name="returned">A folder or zip.</param>
    public static Produced Make(string dealtFolder, string returned)
    {
        var dealt = DealtFolder.Read(dealtFolder);
        if (!dealt.Succeeded) return Produced.Nothing(dealt.Problems);
        var (files, problem) = ReturnedFiles.At(returned);
        return files is not null ? Make(dealt.Model, files) : Produced.Nothing(problem!);
    }

    /// <summary>Grades files against a deal that is at hand.</summary>
    internal static Produced Make(DealtClass dealt, ReturnedFiles files)
    {
        var grader = new ClassGrader(dealt);
        return Make(grader.Settle(ParallelJudging.Judge(grader, files.Read())));
    }

    /// <summary>Writes up grades.</summary>
    internal static Produced Make(ClassGrades grades)
    {
        var summary = ClassSummarizer.Summarize(grades);
        return new(
            [
                new("gradebook.xlsx", GradebookWriter.Write(grades, summary)),
                OutputFile.OfText("grades.csv", GradesCsv.Write(grades)),
                OutputFile.OfText("grades.json", GradesJson.Write(grades)),
                OutputFile.OfText("class-report.html", HtmlPages.ClassReport(grades, summary)),
                .. grades.Students.Select(student => OutputFile.OfText($"feedback/{student.Student.Student.Id}.html", () => HtmlPages.Feedback(student, grades.Dealt))),
            ],
            Notes(grades, summary), []);
    }

    private static string Others(ClassGrades grades)
    {
        var leftovers = grades.Files.Count(file => file.Fate == FileFate.Leftover);
        return $"{grades.Unmatched.Count - leftovers} other files accounted for" + (leftovers > 0 ? $", {leftovers} left behind by programs ignored" : "");
    }

    private static List<string> Notes(ClassGrades grades, ClassSummary summary)
    {
        int With(GradeStatus status) => grades.Students.Count(student => student.Status == status);
        List<string> notes =
        [
            $"{With(GradeStatus.Graded)} of {grades.Students.Count} students graded, {With(GradeStatus.Missing)} missing, {With(GradeStatus.Unreadable)} unreadable; {Others(grades)}.",
        ];
        var flagged = grades.Students.Count(student => student.Flags.Count > 0);
        if (flagged > 0) notes.Add($"{flagged} students have something to look at; the class report lists it.");
        if (summary.TeachAgain is [var first, ..])
            notes.Add($"Teach again first: {first.Exercise.Title}, “{first.Part.Ask}” ({first.Understood} of {first.Judged} show the method).");
        return notes;
    }
}
