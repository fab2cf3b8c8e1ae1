using ClassKit.Grading.FollowUps;
using ClassKit.Grading.Summaries;
using ClassKit.Terms.Outlooks;

namespace ClassKit.Pages.Tests.Samples;

/// <summary>One page of every kind, by file name.</summary>
internal static class SamplePages
{
    public static IReadOnlyDictionary<string, string> All { get; } = Render();

    public static IReadOnlyDictionary<string, string> Render()
    {
        var pages = new Dictionary<string, string>();
        foreach (var grade in SampleClass.Grades.Students)
            pages[$"feedback-{grade.Who.Id}.html"] = HtmlPages.Feedback(grade, SampleClass.Dealt);
        pages["class-report.html"] = HtmlPages.ClassReport(SampleClass.Grades, SampleClass.Summary);
        pages["feedback-to-print.html"] = string.Concat(HtmlPages.FeedbackToPrint(SampleClass.Grades, _ => null));
        pages["sheets-to-print.html"] = string.Concat(HtmlPages.SheetsToPrint(SampleClass.Dealt));
        pages["sheet.html"] = HtmlPages.Sheet(SampleClass.Dealt, SampleClass.Dealt.Students[0]);
        pages["self-check.html"] = HtmlPages.SelfCheck(SampleClass.Dealt, SampleClass.Dealt.Students[2]);
        pages["rehearsal.html"] = HtmlPages.Rehearsal(SampleRehearsal.Report);
        pages["follow-up.html"] = HtmlPages.FollowUp(
            SampleClass.Dealt,
            SampleClass.Dealt.Students.ToDictionary(
                student => student.Who.Id,
                _ =>
                    (IReadOnlyList<FollowUpExercise>)
                        [
                            new(SampleExercises.Hydration, 1.5m, true, SampleExercises.Hydration.Parts[0].Misconceptions),
                            new(SampleExercises.Scaling, 2, false, []),
                        ]
            )
        );
        pages["written-answers.html"] = HtmlPages.WrittenAnswers(SampleWords.Grades);
        pages["class-report-words.html"] = HtmlPages.ClassReport(SampleWords.Grades, ClassSummarizer.Summarize(SampleWords.Grades));
        foreach (var grade in SampleWords.Grades.Students.Take(5))
            pages[$"feedback-words-{grade.Who.Id}.html"] = HtmlPages.Feedback(grade, SampleWords.Grades.Dealt);
        pages["sheet-words.html"] = HtmlPages.Sheet(SampleWords.Grades.Dealt, SampleWords.Grades.Dealt.Students[0]);
        pages["self-check-words.html"] = HtmlPages.SelfCheck(SampleWords.Grades.Dealt, SampleWords.Grades.Dealt.Students[0]);
        pages["answer-key-words.html"] = string.Concat(HtmlPages.AnswerKey(SampleWords.Grades.Dealt));
        pages["term-report.html"] = HtmlPages.TermReport(SampleTerm.Term, SampleTerm.Grades);
        pages["grades-to-print.html"] = HtmlPages.GradesToPrint(SampleTerm.Term, SampleTerm.Grades);
        foreach (var grade in SampleTerm.Grades)
            pages[$"term-{grade.Student.Id}.html"] = HtmlPages.TermStudent(SampleTerm.Term, grade, Outlook.Of(SampleTerm.Term, grade));
        pages["difficulty.html"] = HtmlPages.Difficulty(SampleDifficulty.Known);
        pages["skills.html"] = HtmlPages.ClassSkills(SampleSkills.Class);
        pages["skills-student.html"] = HtmlPages.StudentSkills(SampleSkills.Class, SampleSkills.Class.Students[0]);
        pages["skills-none.html"] = HtmlPages.StudentSkills(SampleSkills.Class, SampleSkills.Class.Students[^1]);
        pages["observation-form.html"] = HtmlPages.ObservationForm(new(SamplePack.Pack));
        pages["what-we-measured.html"] = HtmlPages.ObservedClass(
            SamplePack.Pack,
            SampleMeasurements.Of(SamplePack.Pack),
            ["Team 9.txt: <nothing> was measured."]
        );
        pages["bench-form.html"] = HtmlPages.BenchForm(SampleTerm.Form);
        pages["marking-agreement.html"] = HtmlPages.Agreement(SampleTerm.Term.Title, SampleTerm.Term.Class, SampleTerm.Agreement);
        pages["answer-key.html"] = string.Concat(HtmlPages.AnswerKey(SampleClass.Dealt));
        foreach (var page in HtmlPages.Pack(SamplePack.Pack))
            pages[page.FileName] = page.Html;
        return pages;
    }
}
