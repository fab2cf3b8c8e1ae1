using ClassKit.Exercises.Cohorts;
using ClassKit.Exercises.Dealing;
using ClassKit.Exercises.Identity;
using ClassKit.Exercises.Variants;
using ClassKit.Grading.FollowUps;
using ClassKit.Grading.Rehearsals;
using ClassKit.Grading.Results;
using ClassKit.Grading.Summaries;
using ClassKit.Lessons.Measured;
using ClassKit.Lessons.Packs;
using ClassKit.Pages.Benches;
using ClassKit.Pages.ClassPrints;
using ClassKit.Pages.Difficulty;
using ClassKit.Pages.Feedback;
using ClassKit.Pages.Forms;
using ClassKit.Pages.Keys;
using ClassKit.Pages.Observations;
using ClassKit.Pages.Observed;
using ClassKit.Pages.Packs;
using ClassKit.Pages.Practice;
using ClassKit.Pages.Projector;
using ClassKit.Pages.Rehearsals;
using ClassKit.Pages.Rendering;
using ClassKit.Pages.Report;
using ClassKit.Pages.Sensory;
using ClassKit.Pages.Skills;
using ClassKit.Pages.Stations;
using ClassKit.Pages.Terms;
using ClassKit.Pages.Trays;
using ClassKit.Pages.Written;
using ClassKit.Terms.Agreement;
using ClassKit.Terms.Bench;
using ClassKit.Terms.Difficulty;
using ClassKit.Terms.Grades;
using ClassKit.Terms.Outlooks;
using ClassKit.Terms.Skills;
using ClassKit.Terms.Work;

namespace ClassKit.Pages;

/// <summary>Every HTML page that ClassKit makes, as the text of one complete file.</summary>
/// <remarks>
/// A page needs nothing beside itself: no picture file, no request, and no script but that of <see cref="SelfCheck"/>. The same models give
/// the same text. All methods can be called from several threads at once.
/// </remarks>
public static class HtmlPages
{
    /// <summary>What one student reads about their returned workbook; printed, one sheet of both sides.</summary>
    /// <param name="grade">The student's grades.</param>
    /// <param name="dealt">What the class was dealt.</param>
    /// <param name="another">Other numbers to try an exercise with; null for none.</param>
    public static string Feedback(StudentGrade grade, DealtClass dealt, Variant? another = null) =>
        PageRenderer.Render<FeedbackPage>(
            (nameof(FeedbackPage.Grade), grade),
            (nameof(FeedbackPage.Dealt), dealt),
            (nameof(FeedbackPage.Another), another)
        );

    /// <summary>What one student was dealt, to print and to write on; no answer is in it.</summary>
    public static string Sheet(DealtClass dealt, DealtStudent student) =>
        PageRenderer.Render<SheetPage>((nameof(SheetPage.Class), dealt), (nameof(SheetPage.Dealt), student));

    /// <summary>Every student's feedback in one file to print at once, in the order of the class, behind a list of who gets what.</summary>
    /// <param name="grades">The grades of the class.</param>
    /// <param name="another">Other numbers to try an exercise with, of a student; null for none.</param>
    /// <param name="part">Which students; null for all.</param>
    /// <returns>The page in pieces, made one by one.</returns>
    public static IEnumerable<string> FeedbackToPrint(ClassGrades grades, Func<StudentGrade, Variant?> another, ClassPart? part = null) =>
        PrintPieces.Feedback(grades, another, part);

    /// <summary>
    /// Every student's sheet in one file to print at once, in the order of the class, behind a list of who gets what; no answer is in it.
    /// </summary>
    /// <param name="dealt">What the class was dealt.</param>
    /// <param name="part">Which students; null for all.</param>
    /// <returns>The page in pieces, made one by one.</returns>
    public static IEnumerable<string> SheetsToPrint(DealtClass dealt, ClassPart? part = null) => PrintPieces.Sheets(dealt, part);

    /// <summary>Practice that checks itself, with a small script and every answer in it: never for what is handed in.</summary>
    /// <param name="dealt">Dealt for <see cref="DealPurpose.Practice"/>.</param>
    /// <param name="student">Whose page it is; with an empty name it is anyone's.</param>
    public static string SelfCheck(DealtClass dealt, DealtStudent student) =>
        PageRenderer.Render<SelfCheckPage>((nameof(SelfCheckPage.Class), dealt), (nameof(SelfCheckPage.Dealt), student));

    /// <summary>Who practises what after grading, and why; for the instructor.</summary>
    /// <remarks>It links to <c>pages/&lt;student-id&gt;.html</c> beside it.</remarks>
    public static string FollowUp(DealtClass dealt, IReadOnlyDictionary<string, IReadOnlyList<FollowUpExercise>> chosen) =>
        PageRenderer.Render<FollowUpPage>((nameof(FollowUpPage.Class), dealt), (nameof(FollowUpPage.Chosen), chosen));

    /// <summary>The method of every exercise and every student's numbers and answers; for the instructor only.</summary>
    /// <returns>The page in pieces, made one by one: of a large class it is never whole in memory.</returns>
    public static IEnumerable<string> AnswerKey(DealtClass dealt)
    {
        ArgumentNullException.ThrowIfNull(dealt);
        return KeyPieces.Of(dealt);
    }

    /// <summary>What the instructor reads about the whole class: what to teach again first, then everything behind it.</summary>
    /// <param name="grades">The grades of the class.</param>
    /// <param name="summary">What they say together.</param>
    /// <param name="partReports">The reports beside it in which the single students of a large class stand; none where they stand in this
    /// one.</param>
    /// <param name="written">The page beside it on which answers in own words stand side by side.</param>
    /// <remarks>It links to <c>feedback/&lt;student-id&gt;.html</c> beside it.</remarks>
    public static string ClassReport(
        ClassGrades grades,
        ClassSummary summary,
        IReadOnlyList<PartReport>? partReports = null,
        string written = "written-answers.html"
    ) =>
        PageRenderer.Render<ClassReportPage>(
            (nameof(ClassReportPage.Grades), grades),
            (nameof(ClassReportPage.Summary), summary),
            (nameof(ClassReportPage.PartReports), partReports ?? []),
            (nameof(ClassReportPage.WrittenPage), written)
        );

    /// <summary>
    /// Every answer in own words, side by side by part, with what to look for and a place for points; for the instructor only.
    /// </summary>
    public static string WrittenAnswers(ClassGrades grades) =>
        PageRenderer.Render<WrittenAnswersPage>((nameof(WrittenAnswersPage.Grades), grades));

    /// <summary>Every page of a lesson pack: those of <c>PackContents</c>.</summary>
    /// <remarks>The pages link to each other by their file names.</remarks>
    public static IReadOnlyList<HtmlPage> Pack(LessonPack pack) =>
        [
            new(PackContents.Index.FileName, PageRenderer.Render<IndexPage>((nameof(IndexPage.Pack), pack))),
            new(PackContents.Guide.FileName, PageRenderer.Render<GuidePage>((nameof(GuidePage.Pack), pack))),
            new(PackContents.Requisition.FileName, PageRenderer.Render<RequisitionPage>((nameof(RequisitionPage.Pack), pack))),
            new(PackContents.Stations.FileName, PageRenderer.Render<StationsPage>((nameof(StationsPage.Pack), pack))),
            new(PackContents.Bench.FileName, PageRenderer.Render<BenchPlanPage>((nameof(BenchPlanPage.Pack), pack))),
            .. pack.Bench.Plan is null
                ? Array.Empty<HtmlPage>()
                : [new(PackContents.RunSheets.FileName, PageRenderer.Render<RunSheetsPage>((nameof(RunSheetsPage.Pack), pack)))],
            new(PackContents.Handout.FileName, PageRenderer.Render<HandoutPage>((nameof(HandoutPage.Pack), pack))),
            new(PackContents.Cards.FileName, PageRenderer.Render<FormulaCardsPage>((nameof(FormulaCardsPage.Pack), pack))),
            new(PackContents.Observations.FileName, PageRenderer.Render<ObservationsPage>((nameof(ObservationsPage.Pack), pack))),
            new(PackContents.Tasting.FileName, PageRenderer.Render<TastingSheetPage>((nameof(TastingSheetPage.Pack), pack))),
            new(PackContents.TastingKey.FileName, PageRenderer.Render<TastingKeyPage>((nameof(TastingKeyPage.Pack), pack))),
            new(PackContents.Projector.FileName, PageRenderer.Render<ProjectorPage>((nameof(ProjectorPage.Pack), pack))),
            new(PackContents.Rubric.FileName, PageRenderer.Render<RubricPage>((nameof(RubricPage.Pack), pack))),
            new(PackContents.Comparison.FileName, PageRenderer.Render<ComparisonPage>((nameof(ComparisonPage.Pack), pack))),
        ];

    /// <summary>
    /// Pages for a class in one file to print at once, each as often as it is wanted, behind a list of what lies in the pile.
    /// </summary>
    /// <param name="pack">The pack of the lesson that they are printed for.</param>
    /// <param name="pages">What is printed, in order.</param>
    /// <param name="bothSides">True to print on both sides: what begins on a sheet of its own has blank sides before it.</param>
    /// <returns>The page in pieces, made one by one.</returns>
    public static IEnumerable<string> ToPrint(LessonPack pack, IReadOnlyList<PrintedPage> pages, bool bothSides = true) =>
        TrayPieces.Of(pack, pages, bothSides);

    /// <summary>What an invented class showed about a set of exercises before the real one takes it.</summary>
    public static string Rehearsal(RehearsalReport report) => PageRenderer.Render<RehearsalPage>((nameof(RehearsalPage.Report), report));

    /// <summary>The grades of a class at the end of a term; for the instructor.</summary>
    /// <remarks>It links to <c>students/&lt;student-id&gt;.html</c> beside it.</remarks>
    public static string TermReport(SchoolTerm term, IReadOnlyList<TermGrade> grades) =>
        PageRenderer.Render<TermReportPage>((nameof(TermReportPage.Term), term), (nameof(TermReportPage.Grades), grades));

    /// <summary>Bench marks on a phone or tablet without a network; for the instructor.</summary>
    public static string BenchForm(BenchForm form) => PageRenderer.Render<BenchFormPage>((nameof(BenchFormPage.Form), form));

    /// <summary>The page that a team types its measurements into, at the bench and without a network.</summary>
    public static string ObservationForm(ObservationForm form) =>
        PageRenderer.Render<ObservationFormPage>((nameof(ObservationFormPage.Form), form));

    /// <summary>What a class measured, on what was predicted.</summary>
    /// <param name="pack">The lesson and the class.</param>
    /// <param name="measured">What was measured.</param>
    /// <param name="unread">What came back and could not be used, in words.</param>
    public static string ObservedClass(LessonPack pack, MeasuredClass measured, IReadOnlyList<string> unread) =>
        PageRenderer.Render<ObservedClassPage>(
            (nameof(ObservedClassPage.Pack), pack),
            (nameof(ObservedClassPage.Measured), measured),
            (nameof(ObservedClassPage.Unread), unread)
        );

    /// <summary>What a class can do, skill by skill, by all its work; for the instructor.</summary>
    public static string ClassSkills(ClassSkills skills) => PageRenderer.Render<ClassSkillsPage>((nameof(ClassSkillsPage.Skills), skills));

    /// <summary>How hard exercises proved in earlier classes; for the instructor.</summary>
    public static string Difficulty(SetDifficulty set) => PageRenderer.Render<DifficultyPage>((nameof(DifficultyPage.Set), set));

    /// <summary>What one student can do, skill by skill.</summary>
    public static string StudentSkills(ClassSkills skills, StudentSkills student) =>
        PageRenderer.Render<StudentSkillsPage>((nameof(StudentSkillsPage.Skills), skills), (nameof(StudentSkillsPage.Student), student));

    /// <summary>How far the markers of works that two have marked agree; for the instructor.</summary>
    /// <param name="about">What is compared: a term, or one piece of work.</param>
    /// <param name="students">The class.</param>
    /// <param name="works">At least one.</param>
    public static string Agreement(string about, Roster students, IReadOnlyList<MarkerAgreement> works) =>
        PageRenderer.Render<AgreementPage>(
            (nameof(AgreementPage.About), about),
            (nameof(AgreementPage.Class), students),
            (nameof(AgreementPage.Works), works)
        );

    /// <summary>Everybody's grade with its working in one file to print at once, each student on a sheet of their own; the list on top is for the
    /// instructor.</summary>
    public static string GradesToPrint(SchoolTerm term, IReadOnlyList<TermGrade> grades) =>
        PageRenderer.Render<GradesToPrintPage>((nameof(GradesToPrintPage.Term), term), (nameof(GradesToPrintPage.Grades), grades));

    /// <summary>One student's grade with its working, and what is needed in what is still to come.</summary>
    public static string TermStudent(SchoolTerm term, TermGrade grade, Outlook? outlook) =>
        PageRenderer.Render<TermStudentPage>(
            (nameof(TermStudentPage.Term), term),
            (nameof(TermStudentPage.Grade), grade),
            (nameof(TermStudentPage.Outlook), outlook)
        );
}
