using System.Collections.Concurrent;
using ClassKit.Exercises.Dealing;
using ClassKit.Exercises.Layout;
using ClassKit.Grading.Finding;
using ClassKit.Grading.Findings;
using ClassKit.Grading.Findings.Refusals;
using ClassKit.Grading.Intake;
using ClassKit.Grading.Integrity;
using ClassKit.Grading.Judging;
using ClassKit.Grading.OnPaper;
using ClassKit.Grading.Results;

namespace ClassKit.Grading;

/// <summary>Grades the returned files of a class: each by itself, in any order and on any thread, and then all together.</summary>
public sealed class ClassGrader
{
    private readonly DealtClass _dealt;
    private readonly PracticeLayout _layout;
    private readonly OwnerFinder _owners;
    private readonly ClassInputs _fresh;
    private readonly WorkbookGrader _grader;
    private readonly AnswerPool _answers = new();
    private readonly ConcurrentDictionary<(string Identity, string? Named), Lazy<JudgedContent>> _judged = new();

    /// <summary>Draws the fresh inputs that every workbook of the class will be tried with.</summary>
    /// <param name="dealt">What was dealt.</param>
    /// <param name="recorded">What an earlier grading put on record: its fresh inputs are used where they still fit; null for none.</param>
    public ClassGrader(DealtClass dealt, JudgeRecord? recorded = null)
    {
        ArgumentNullException.ThrowIfNull(dealt);
        _dealt = dealt;
        _owners = new(dealt);
        _layout = dealt.LayOut();
        _fresh = new(dealt, recorded);
        _grader = new(dealt, _layout, _fresh);
    }

    /// <summary>Grades every file; each ends as a student's graded work, as unreadable, or as unmatched with the reason.</summary>
    /// <param name="dealt">What was dealt.</param>
    /// <param name="files">What came back, in any order.</param>
    public static ClassGrades Grade(DealtClass dealt, IEnumerable<ReturnedFile> files)
    {
        ArgumentNullException.ThrowIfNull(files);
        var grader = new ClassGrader(dealt);
        var judged = grader.Begin();
        foreach (var file in files)
            judged.Add(grader.Judge(file));
        return grader.Settle(judged);
    }

    /// <summary>Where to put what is judged.</summary>
    public JudgedFiles Begin() => new(_dealt);

    /// <summary>Finds out whose a file is and judges what is in it. Can be called from several threads at once.</summary>
    public JudgedFile Judge(ReturnedFile file)
    {
        ArgumentNullException.ThrowIfNull(file);
        return file.Refusal is Refusal.Leftover ? OfNobody(file) : As(file, _owners.ByFileName(file.Path));
    }

    /// <summary>
    /// The same for a file that may have come back under several names: what is in it is read and judged once; if only names say whose it
    /// is, once for every student they speak of.
    /// </summary>
    /// <param name="identity">The same for the same bytes.</param>
    /// <param name="read">Reads the file.</param>
    /// <param name="path">Its name this time.</param>
    /// <param name="dated">When it was changed last by the folder or archive that it came in.</param>
    public JudgedFile JudgeOnce(string identity, Func<ReturnedFile> read, string path, DateTime? dated)
    {
        var named = _owners.ByFileName(path);
        var content = Once(null);
        if (content.Owner.Student is null && named is not null)
            content = content.File.Refusal is null ? Once(named) : content with { Owner = new(named, OwnerEvidence.FileName) };
        return Named(content with { File = content.File with { Path = path, Dated = dated } }, named);

        JudgedContent Once(DealtStudent? student) =>
            _judged.GetOrAdd((identity, student?.Who.Id), _ => new(() => Judge(read(), student))).Value;
    }

    /// <summary>A file that nobody is asked about: left behind by a program, or one that even its name cannot be read of.</summary>
    public static JudgedFile OfNobody(ReturnedFile file) => new(file, null, null);

    /// <summary>Judges what a student answered on paper.</summary>
    public JudgedFile Judge(PaperWork work)
    {
        ArgumentNullException.ThrowIfNull(work);
        var grade = new StudentGrade(work.Student.Who, GradeStatus.Graded, work.Place, _grader.Grade(work), [])
        {
            Rule = _dealt.Marking.Total,
        };
        return new(new ReturnedFile(work.Place, null, null) { Digest = work.Digest }, work.Student, grade) { IsPaper = true };
    }

    private JudgedFile As(ReturnedFile file, DealtStudent? named) => Named(Judge(file, named), named);

    /// <summary>What does not depend on the file's name but for the student whom it speaks of.</summary>
    private JudgedContent Judge(ReturnedFile file, DealtStudent? named)
    {
        if (file.Workbook is not { } workbook)
            return new(file, new(named, OwnerEvidence.FileName), null, []);
        var finder = new CellFinder(workbook, _dealt.Plan);
        var numbers = new DealtNumbers(_dealt, _layout, workbook, finder);
        var owner = _owners.ByContent(workbook, numbers);
        if (owner.Student is null && named is not null)
            owner = new(named, OwnerEvidence.FileName);
        var marks = DealMarks.In(workbook);
        var origin = DealEvidence.Weigh(_dealt, marks, numbers, owner.Student);
        file = file with { Workbook = null };
        if (origin == DealOrigin.Other && (marks.SaySomething || owner.Student is not null))
            return new(file, owner, null, []) { Other = OtherDeals.In(_dealt, marks) };
        var found = new List<Flag>();
        var holds = owner is { Student: { } bears, How: OwnerEvidence.IdCell } ? numbers.InPlaceOf(bears) : null;
        if (holds is not null)
            found.Add(new Flag.NumbersOfAnother(new(file.Path), owner.Student!.Who, holds.Who));
        var answers = owner.Student is { } student
            ? _answers.Pack(_grader.Grade(student, workbook, finder, found, numbersOf: holds))
            : null;
        return new(file, owner, answers, found) { Doubtful = origin == DealOrigin.Doubtful ? marks : null };
    }

    private JudgedFile Named(JudgedContent content, DealtStudent? named)
    {
        var (file, student) = (content.File, content.Owner.Student);
        if (student is null || content.Answers is not { } answers)
            return new(file, student, null) { Other = content.Other };
        var flags = FlagOwner(file, content.Owner, named);
        if (content.Doubtful is { } marks)
            flags.Add(DealEvidence.Doubt(new(file.Path), marks, _dealt));
        return new(
            file,
            student,
            new(student.Who, GradeStatus.Graded, file.Path, answers, [.. flags, .. content.Flags]) { Rule = _dealt.Marking.Total }
        );
    }

    /// <summary>Gives every student the file that counts, and accounts for all others.</summary>
    /// <param name="files">All of them.</param>
    public ClassGrades Settle(JudgedFiles files)
    {
        ArgumentNullException.ThrowIfNull(files);
        var inOrder = files.Files.OrderBy(file => file.Path, StringComparer.Ordinal).ToList();
        var byStudent = inOrder.Where(file => file.Student is not null).ToLookup(file => file.Student!.Who.Id);
        var chooser = new VersionChooser(_dealt);
        var settled = _dealt.Students.Select(student => chooser.Choose(student, [.. byStudent[student.Who.Id]])).ToList();
        var counting = settled.Select(student => student.Grade.File).OfType<string>().ToHashSet(StringComparer.Ordinal);
        var named = inOrder.Where(file => file.NamedAs is not null).ToLookup(file => file.NamedAs!.Id);
        return WithFacts(
            new(
                _dealt,
                [
                    .. settled.Select(student =>
                        student.Grade.Status == GradeStatus.Missing
                            ? student.Grade with
                            {
                                Flags =
                                [
                                    .. student.Grade.Flags,
                                    .. named[student.Grade.Who.Id].Select(file => UnderTheirName(file, counting)),
                                ],
                            }
                            : student.Grade
                    ),
                ],
                [
                    .. settled
                        .SelectMany(student => student.Files)
                        .Concat(inOrder.Where(file => file.Student is null).Select(OfNobody))
                        .OrderBy(file => file.File, StringComparer.Ordinal),
                ]
            )
            {
                Came = inOrder
                    .Where(file => file.Dated is not null)
                    .DistinctBy(file => file.Path)
                    .ToDictionary(file => file.Path, file => file.Dated!.Value),
                Judging = _fresh.ToRecord(
                    _dealt
                        .Students.Zip(settled)
                        .Where(student => student.Second.Grade.Status == GradeStatus.Graded)
                        .Select(student => student.First)
                ),
            },
            inOrder
        );
    }

    private static ClassGrades WithFacts(ClassGrades grades, IReadOnlyList<JudgedFile> files)
    {
        var facts = IntegrityFacts.In(grades, files);
        return grades with
        {
            Students = [.. grades.Students.Select(student => student with { Flags = [.. student.Flags, .. facts[student.Who.Id]] })],
        };
    }

    /// <summary>To whom nothing came from it is said, too, that a file bears their name and holds another's work.</summary>
    private static Flag UnderTheirName(JudgedFile file, HashSet<string> counting) =>
        counting.Contains(file.Path)
            ? new Flag.NameDiffers(file.Name, file.NamedAs!, file.Student!.Who)
            : new Flag.UnderOtherName(file.Name, file.NamedAs!, file.Student!.Who);

    private static List<Flag> FlagOwner(ReturnedFile file, Owner owner, DealtStudent? named)
    {
        var flags = new List<Flag>();
        if (owner.How != OwnerEvidence.IdCell)
            flags.Add(new Flag.OwnerInferred(new(file.Path), owner.How == OwnerEvidence.Givens));
        if (named is not null && named != owner.Student)
            flags.Add(new Flag.NameDiffers(new(file.Path), named.Who, owner.Student!.Who));
        return flags;
    }

    private AccountedFile OfNobody(JudgedFile file)
    {
        if (file.IsLeftover)
            return file.As(FileFate.Leftover, new Uncounted.NotRead(file.Refusal));
        if (file.Other is { } other)
            return file.As(FileFate.OtherDeal, new Uncounted.OfOtherDeal(other, _dealt.LessonTitle, _dealt.Identity?.Code));
        return file.IsRead ? file.As(FileFate.NotOfThisClass, new Uncounted.OfNobody(_dealt.Cohort)) : file.AsUnread();
    }
}
