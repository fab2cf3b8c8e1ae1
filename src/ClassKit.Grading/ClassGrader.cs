using ClassKit.Exercises;

namespace ClassKit.Grading;

/// <summary>Grades the returned files of a class: each by itself, in any order and on any thread, and then all together.</summary>
public sealed class ClassGrader
{
    private readonly DealtClass _dealt;
    private readonly OwnerFinder _owners;
    private readonly WorkbookGrader _grader;

    /// <summary>Draws the fresh inputs that every workbook of the class will be tried with.</summary>
    public ClassGrader(DealtClass dealt)
    {
        ArgumentNullException.ThrowIfNull(dealt);
        _dealt = dealt;
        _owners = new(dealt);
        _grader = new(dealt);
    }

    /// <summary>Grades every file; each ends as a student's graded work, as unreadable, or as unmatched with the reason.</summary>
    /// <param name="dealt">What was dealt.</param>
    /// <param name="files">What came back, in any order.</param>
    public static ClassGrades Grade(DealtClass dealt, IEnumerable<ReturnedFile> files)
    {
        ArgumentNullException.ThrowIfNull(files);
        var grader = new ClassGrader(dealt);
        var judged = grader.Begin();
        foreach (var file in files) judged.Add(grader.Judge(file));
        return grader.Settle(judged);
    }

    /// <summary>Where to put what is judged.</summary>
    public JudgedFiles Begin() => new(_dealt);

    /// <summary>Finds out whose a file is and judges what is in it. Can be called from several threads at once.</summary>
    public JudgedFile Judge(ReturnedFile file)
    {
        ArgumentNullException.ThrowIfNull(file);
        if (file.IsLeftover) return new(file, null, null);
        var named = _owners.ByFileName(file.Path);
        if (file.Workbook is not { } workbook) return new(file, named, null);
        var numbers = new DealtNumbers(_dealt, workbook);
        var owner = _owners.ByContent(workbook, numbers);
        if (owner.Student is null && named is not null) owner = new(named, OwnerEvidence.FileName);
        var marks = DealMarks.In(workbook);
        var origin = DealEvidence.Weigh(_dealt, marks, numbers, owner.Student);
        if (origin == DealOrigin.Other && (marks.SaySomething || owner.Student is not null)) return new(file, owner.Student, null) { Other = OtherDeal.Of(_dealt, marks) };
        if (owner.Student is not { } student) return new(file, null, null);

        var flags = FlagOwner(file, owner, named);
        if (origin == DealOrigin.Doubtful) flags.Add(DealEvidence.Doubt(file.Path, marks, _dealt));
        return new(file, student, new(student, GradeStatus.Graded, file.Path, _grader.Grade(student, workbook, flags), flags) { Rule = _dealt.Marking.Total });
    }

    /// <summary>Gives every student the file that counts, and accounts for all others.</summary>
    /// <param name="files">All of them.</param>
    public ClassGrades Settle(JudgedFiles files)
    {
        ArgumentNullException.ThrowIfNull(files);
        var inOrder = files.Files.OrderBy(file => file.Path, StringComparer.Ordinal).ToList();
        var byStudent = inOrder.Where(file => file.Student is not null).ToLookup(file => file.Student!.Student.Id);
        var chooser = new VersionChooser(_dealt);
        var settled = _dealt.Students.Select(student => chooser.Choose(student, [.. byStudent[student.Student.Id]])).ToList();
        return WithFacts(new(_dealt, [.. settled.Select(student => student.Grade)],
        [
            .. settled.SelectMany(student => student.Files).Concat(inOrder.Where(file => file.Student is null).Select(OfNobody))
                .OrderBy(file => file.File, StringComparer.Ordinal),
        ]));
    }

    private static ClassGrades WithFacts(ClassGrades grades)
    {
        var facts = IntegrityFacts.In(grades);
        return grades with { Students = [.. grades.Students.Select(student => student with { Flags = [.. student.Flags, .. facts[student.Student.Student.Id]] })] };
    }

    private static List<Flag> FlagOwner(ReturnedFile file, Owner owner, DealtStudent? named)
    {
        var flags = new List<Flag>();
        var name = owner.Student!.Student.Shown;
        if (owner.How != OwnerEvidence.IdCell)
        {
            var told = owner.How == OwnerEvidence.Givens ? "the numbers dealt to this student are in it" : "only the file's name says whose it is";
            flags.Add(new(FlagCodes.OwnerInferred, $"{file.Path}: the student's id is not in its cell any more; {told}. Please confirm."));
        }

        if (named is not null && named != owner.Student)
            flags.Add(new(FlagCodes.NameDiffers, $"{file.Path}: by its name this file is {named.Student.Shown}'s, but the workbook inside was dealt to {name}, for whom it was graded. Two files may have been swapped, or one student may have sent in for another."));
        return flags;
    }

    private AccountedFile OfNobody(JudgedFile file)
    {
        if (file.IsLeftover) return file.As(FileFate.Leftover, file.Refusal);
        if (file.Other is { } other) return file.As(FileFate.OtherDeal, OtherDealWords.Why(other, _dealt));
        return file.IsRead
            ? file.As(FileFate.NotOfThisClass, $"This workbook was not dealt to anyone in {ClassName.InSentence(_dealt.Cohort)}: it carries no id of this class, and its numbers are nobody's. Was it dealt for another class or lesson?")
            : file.As(FileFate.Refused, file.Refusal);
    }
}
