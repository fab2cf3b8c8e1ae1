using ClassKit.Content.Classes;
using ClassKit.Content.Sources;
using ClassKit.Exercises.Cohorts;
using ClassKit.Exercises.Dealing;
using ClassKit.Exercises.Layout;
using ClassKit.Grading.Intake;
using ClassKit.Grading.Results;
using ClassKit.Grading.Summaries;
using ClassKit.Grading.Waiting;
using ClassKit.UseCases.Dealing;
using ClassKit.UseCases.Grading;

namespace ClassKit.Desk.Folders;

/// <summary>How far a round is, as its folders say.</summary>
/// <param name="Round">Which.</param>
/// <param name="Dealt">What was dealt.</param>
/// <param name="Grades">How it was graded; null if it was not.</param>
/// <param name="HasFiles">True if anything came back.</param>
public sealed record RoundState(Round Round, DealtClass Dealt, ClassGrades? Grades, bool HasFiles)
{
    /// <summary>A word for whoever was absent or is excused, by their ids: nothing of theirs is waited for.</summary>
    public IReadOnlyDictionary<string, string> Away { get; init; } = new Dictionary<string, string>();

    /// <summary>Those who are waited for and of whom nothing came that could be read; null as long as nothing was judged.</summary>
    public IReadOnlyList<StudentGrade>? Out =>
        Grades?.Students.Where(student => student.Status != GradeStatus.Graded && !Away.ContainsKey(student.Who.Id)).ToList();

    /// <summary>How many students' work was judged.</summary>
    public int In => Grades?.Students.Count(student => student.Status == GradeStatus.Graded) ?? 0;

    /// <summary>Answers that wait for the instructor, with whose they are.</summary>
    public IReadOnlyList<(Student Who, AnswerGrade Answer)> Undecided =>
        [
            .. (Grades?.Students ?? []).SelectMany(student =>
                student.Answers.Where(answer => answer.IsUndecided).Select(answer => (student.Who, answer))
            ),
        ];

    /// <summary>Answers that could not be worked out, with later ones that wait for nothing but them, and whose they are.</summary>
    public IReadOnlyList<(Student Who, HeldUp Held)> HeldUp { get; } = Grades is null ? [] : [.. AllHeldUp(Grades, Dealt.LayOut())];

    /// <summary>What waits for an answer of a student; null if nothing does.</summary>
    public HeldUp? HeldUpBy(Student who, AnswerGrade answer) =>
        HeldUp.FirstOrDefault(one => one.Who == who && one.Held.First == answer).Held;

    /// <summary>The answer that one of a student waits for; null if it waits for none.</summary>
    public AnswerGrade? WaitsFor(Student who, AnswerGrade answer) =>
        HeldUp.FirstOrDefault(one => one.Who == who && one.Held.Behind.Any(behind => behind.Answer == answer)).Held?.First;

    /// <summary>Files that bear one student's name and hold another's workbook.</summary>
    public IReadOnlyList<MisnamedFile> Misnamed { get; } = Grades is null ? [] : MisnamedFile.In(Grades);

    /// <summary>
    /// Files that stand beside nobody's name, but for what programs left behind; and one too many of a student's that bears another's name.
    /// </summary>
    public IReadOnlyList<AccountedFile> Unclear =>
        [
            .. (Grades?.Unmatched ?? []).Where(file =>
                (file.Student is null || file.Fate == FileFate.OtherDeal) && file.Fate is not (FileFate.Leftover or FileFate.OtherVersion)
            ),
            .. Misnamed.Where(one => one.HasOther).Select(one => one.File),
        ];

    /// <summary>Whose name a file bears, where it holds another's workbook; null for any other file.</summary>
    public MisnamedFile? MisnamedAs(AccountedFile file) => Misnamed.FirstOrDefault(one => one.File == file);

    /// <summary>Those whose workbook came back with nothing in it, as long as nobody has said whether it is handed in.</summary>
    public IReadOnlyList<StudentGrade> Empty =>
        [.. (Grades?.Students ?? []).Where(student => student.CameBackEmpty && !Away.ContainsKey(student.Who.Id))];

    /// <summary>
    /// Answers of which only somebody who reads can say what they are: words where a number or a letter was asked. They count nothing as long
    /// as nobody has looked. Where a letter was asked, two of them are words as well.
    /// </summary>
    public IReadOnlyList<(Student Who, AnswerGrade Answer)> Unread =>
        [
            .. (Grades?.Students ?? []).SelectMany(student =>
                student
                    .Answers.Where(answer =>
                        answer is { Outcome: Outcome.Unreadable, Correction: null, Value.IsText: true }
                        && (answer.Part.Choice is null ? IsWords(answer.Value.Text) : answer.Value.Text.Any(char.IsLetter))
                    )
                    .Select(answer => (student.Who, answer))
            ),
        ];

    /// <summary>A sign, a unit or a mistyped number is no word.</summary>
    private static bool IsWords(string text) =>
        text.Split(' ').Any(word => word.Count(char.IsLetter) >= FewestLetters && !word.Any(char.IsDigit));

    private const int FewestLetters = 3;

    /// <summary>
    /// How many decisions stand in the instructor's table and not in the grades, or were taken out of it and still stand there: they are
    /// written first, and the marking that counts them may have been broken off.
    /// </summary>
    public int NotCounted { get; init; }

    /// <summary>How many things wait for a decision.</summary>
    public int Waiting => NotCounted + Unread.Count + Empty.Count + Undecided.Count + Unclear.Count + (Grades?.Waiting.Count ?? 0);

    /// <summary>What to teach again, weakest first.</summary>
    public IReadOnlyList<PartSummary> TeachAgain { get; } = Grades is null ? [] : ClassSummarizer.Summarize(Grades).TeachAgain;

    /// <summary>What was dealt to somebody; null where nothing was.</summary>
    public DealtStudent? SeatOf(Student who) => Dealt.Students.FirstOrDefault(seat => seat.Who.Id == who.Id);

    /// <summary>True if practice after grading was made.</summary>
    public bool IsFollowedUp => Directory.Exists(Round.FollowUp);

    /// <summary>Looks at a round's folders; null if nothing readable was dealt there.</summary>
    public static RoundState? Of(Round round)
    {
        ArgumentNullException.ThrowIfNull(round);
        var dealt = DealtFolder.Read(round.Dealt);
        if (!dealt.Succeeded)
            return null;
        var grades = GradedFolder.HasRecord(round.Graded) ? GradedFolder.Read(round.Graded, dealt.Model).Model : null;
        return new(
            round,
            dealt.Model,
            grades,
            Directory.Exists(round.Returned) && Directory.EnumerateFiles(round.Returned, "*", SearchOption.AllDirectories).Any()
        )
        {
            NotCounted = grades is null ? 0 : Differences(round, dealt.Model, grades),
        };
    }

    private static int Differences(Round round, DealtClass dealt, ClassGrades grades)
    {
        var table = Path.Combine(round.Graded, CorrectionsReader.FileName);
        if (!File.Exists(table) || CorrectionsReader.Read(Source.Named(table), dealt).Model is not { } decided)
            return 0;
        var counted = grades
            .Students.SelectMany(student =>
                student
                    .Answers.Where(answer => answer.Correction is not null)
                    .Select(answer => (student.Who.Id, Exercise: answer.Exercise.Id, Part: answer.Part.Id, answer.Points))
            )
            .ToHashSet();
        var graded = grades.Students.Where(student => student.Answers.Count > 0).Select(student => student.Who.Id).ToHashSet();
        counted.SymmetricExceptWith(
            decided.Where(one => graded.Contains(one.Student)).Select(one => (one.Student, one.Exercise, one.Part, one.Points))
        );
        return counted.Select(one => (one.Id, one.Exercise, one.Part)).Distinct().Count();
    }

    private static IEnumerable<(Student, HeldUp)> AllHeldUp(ClassGrades grades, PracticeLayout layout) =>
        grades.Students.SelectMany(student => Grading.Waiting.HeldUp.Of(student, layout).Select(held => (student.Who, held)));
}
