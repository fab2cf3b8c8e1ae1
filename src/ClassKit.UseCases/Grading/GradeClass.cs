using ClassKit.Content;
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
    /// <param name="corrections">The instructor's table of corrections; null for none.</param>
    /// <param name="due">When the work was due, and on whose clocks.</param>
    /// <param name="earlier">The folder that is graded into again; null if nothing typed into its gradebook is to be read.</param>
    public static Produced Make(string dealtFolder, string returned, string? corrections, Deadline due, EarlierGradebook? earlier = null)
    {
        var dealt = DealtFolder.Read(dealtFolder);
        return dealt.Succeeded ? Make(dealt.Model, returned, corrections, due, earlier) : Produced.Nothing(dealt.Problems);
    }

    /// <summary>Makes the same without names, and apart from it the key that says who is who.</summary>
    /// <inheritdoc cref="Make(string, string, string?, Deadline, EarlierGradebook?)"/>
    public static (Produced Reports, Produced Key) MakePseudonymous(string dealtFolder, string returned, string? corrections, Deadline due)
    {
        var dealt = DealtFolder.Read(dealtFolder);
        var settled = dealt.Succeeded ? due.Settle(dealt.Model) : new(null, dealt.Problems);
        var grades = settled.Succeeded ? Grade(dealt.Model!, returned, corrections, settled.Model.Moment) : new(null, settled.Problems);
        if (!grades.Succeeded) return (Produced.Nothing(grades.Problems), Produced.Nothing(grades.Problems));
        var key = new PseudonymKey(grades.Model.Dealt);
        return (
            Make(Pseudonymizer.Apply(grades.Model, key)).With(settled.Model!.Notes),
            new([OutputFile.OfText(PseudonymsCsv.FileName, PseudonymsCsv.Write(key))], ["Keep the key apart from the reports: it says who is who."], []));
    }

    /// <summary>Grades what was returned against a deal that is at hand.</summary>
    internal static Produced Make(DealtClass dealt, string returned, string? corrections, Deadline due, EarlierGradebook? earlier = null)
    {
        var settled = due.Settle(dealt);
        var grades = settled.Succeeded ? Grade(dealt, returned, corrections, settled.Model.Moment, earlier) : new(null, settled.Problems);
        return grades.Succeeded
            ? Make(grades.Model).With(settled.Model!.Notes) with { Additions = Additions(grades.Model, corrections, earlier) }
            : Produced.Nothing(grades.Problems);
    }

    /// <summary>Reads what was returned, grades it, and puts the instructor's corrections over it.</summary>
    internal static Reading<ClassGrades> Grade(DealtClass dealt, string returned, string? corrections, DueMoment? due, EarlierGradebook? earlier = null, JudgeRecord? recorded = null)
    {
        var corrected = corrections is null ? new([], []) : CorrectionsReader.Read(corrections, dealt);
        if (!corrected.Succeeded) return new(null, corrected.Problems);
        var (files, problem) = ReturnedFiles.At(returned);
        if (files is null) return new(null, [problem!]);
        var grader = new ClassGrader(dealt, recorded);
        var grades = grader.Settle(ParallelJudging.Judge(grader, files.Read()));
        var typed = earlier is null ? new([], []) : TypedIntoGradebook.Read(earlier.Folder, dealt, corrected.Model);
        List<TypedPoints> takenOver = earlier is { TakeOver: true } ? [.. typed.Points.Where(one => one.Problem.Length == 0)] : [];
        grades = Corrector.Apply(due is { } moment ? LateWork.Mark(grades, moment) : grades, [.. corrected.Model, .. takenOver.Select(one => one.ToCorrection())]);
        return new(grades with { Waiting = [.. typed.Points.Except(takenOver)], TakenOver = takenOver, UnreadGradebooks = typed.Notes }, []);
    }

    /// <summary>What goes to the end of the instructor's table of corrections.</summary>
    internal static IReadOnlyList<Addition> Additions(ClassGrades grades, string? corrections, EarlierGradebook? earlier)
    {
        if (grades.TakenOver.Count == 0 || earlier is null) return [];
        var table = corrections ?? Path.Combine(earlier.Folder, CorrectionsReader.FileName);
        return [new(table, CorrectionsAppender.Lines(File.Exists(table) ? File.ReadAllBytes(table) : null, [.. grades.TakenOver.Select(one => one.ToCorrection())]))];
    }

    /// <summary>Writes up grades.</summary>
    internal static Produced Make(ClassGrades grades)
    {
        var summary = ClassSummarizer.Summarize(grades);
        return new(
            [
                new(TypedIntoGradebook.FileName, stream => stream.Write(GradebookWriter.Write(grades, summary))),
                OutputFile.OfText("grades.csv", () => GradesCsv.Write(grades)),
                new(GradesJson.FileName, stream => GradesJson.Write(stream, grades)),
                OutputFile.OfText("class-report.html", () => HtmlPages.ClassReport(grades, summary)),
                .. grades.Students.Select(student => OutputFile.OfText($"feedback/{student.Student.Student.Id}.html", () => HtmlPages.Feedback(student, grades.Dealt, grades.Judging is { } judging ? AnotherTry.For(student, judging) : null))),
            ],
            Notes(grades, summary), []);
    }

    /// <summary>The table of corrections that an instructor keeps in the folder of grades; null if there is none.</summary>
    public static string? CorrectionsIn(string graded) => Path.Combine(graded, CorrectionsReader.FileName) is var path && File.Exists(path) ? path : null;

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
            .. OtherDealWords.Mostly(grades) is { } mostly ? [mostly] : (IEnumerable<string>)[],
            $"{With(GradeStatus.Graded)} of {grades.Students.Count} students graded, {With(GradeStatus.Missing)} missing, {With(GradeStatus.Unreadable)} unreadable; {Others(grades)}.",
        ];
        notes.AddRange(grades.Files.Where(file => file.Fault is not null).Select(file =>
            $"{ShownName.Of(file.File)} could not be judged, by a mistake of ours: look at it yourself, and please report “{file.Fault}”. It counts neither for nor against anyone."));
        var corrected = grades.Students.SelectMany(student => student.Answers).Count(answer => answer.Correction is not null);
        if (corrected > 0) notes.Add($"{corrected} {(corrected == 1 ? "answer has" : "answers have")} the points of your corrections.");
        notes.AddRange(TypedPointsWords.Of(grades));
        var flagged = grades.Students.Count(student => student.Flags.Count > 0);
        if (flagged > 0) notes.Add($"{flagged} students have something to look at; the class report lists it.");
        if (summary.TeachAgain is [var first, ..])
            notes.Add($"Teach again first: {first.Exercise.Title}, “{first.Part.Ask}” ({first.Understood} of {first.Judged} show the method).");
        return notes;
    }
}
