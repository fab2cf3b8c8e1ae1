using ClassKit.CellFormulas;
using ClassKit.Exercises;

namespace ClassKit.Grading;

/// <summary>Grades the returned files of a class.</summary>
public static class ClassGrader
{
    /// <summary>Grades every file; each ends as a student's graded work, as unreadable, or as unmatched with the reason.</summary>
    /// <param name="dealt">What was dealt.</param>
    /// <param name="files">What came back, in any order.</param>
    /// <param name="cancellation">Stops between two workbooks.</param>
    public static ClassGrades Grade(DealtClass dealt, IReadOnlyList<ReturnedFile> files, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(dealt);
        ArgumentNullException.ThrowIfNull(files);
        var finder = new OwnerFinder(dealt);
        var grader = new WorkbookGrader(dealt);
        var unmatched = new List<UnmatchedFile>();
        var graded = new Dictionary<string, List<StudentGrade>>();
        var unreadable = new Dictionary<string, List<ReturnedFile>>();

        foreach (var file in files.OrderBy(file => file.Path, StringComparer.Ordinal))
        {
            cancellation.ThrowIfCancellationRequested();
            var named = finder.ByFileName(file.Stem);
            if (file.Workbook is null)
            {
                if (named is null) unmatched.Add(new(file.Path, $"{file.Refusal} Its name speaks of no student either."));
                else Add(unreadable, named.Student.Id, file);
                continue;
            }
            var owner = finder.ByContent(file.Workbook);
            if (owner.Student is null && named is not null) owner = new(named, OwnerEvidence.FileName);
            if (owner.Student is not { } student)
            {
                unmatched.Add(new(file.Path, $"This workbook was not dealt to anyone in {dealt.Cohort}: it carries no id of this class, and its numbers are nobody's. Was it dealt for another class or lesson?"));
                continue;
            }
            Add(graded, student.Student.Id, Grade(grader, student, file, file.Workbook, owner.How, named));
        }

        return new(dealt, [.. dealt.Students.Select(student => Settle(student, graded, unreadable, unmatched))],
            [.. unmatched.OrderBy(file => file.File, StringComparer.Ordinal)]);
    }

    private static StudentGrade Grade(
        WorkbookGrader grader, DealtStudent student, ReturnedFile file, WorkbookSnapshot workbook, OwnerEvidence how, DealtStudent? named)
    {
        var flags = new List<Flag>();
        if (how != OwnerEvidence.IdCell)
        {
            var told = how == OwnerEvidence.Givens ? "the numbers dealt to this student are in it" : "only the file's name says whose it is";
            flags.Add(new(FlagCodes.OwnerInferred, $"{file.Path}: the student's id is not in its cell any more; {told}. Please confirm."));
        }
        if (named is not null && named != student)
            flags.Add(new(FlagCodes.NameDiffers, $"{file.Path}: by its name this file is {named.Student.Name}'s, but the workbook inside was dealt to {student.Student.Name}, for whom it was graded. Two files may have been swapped, or one student may have sent in for another."));
        return new(student, GradeStatus.Graded, file.Path, grader.Grade(student, workbook, flags), flags);
    }

    /// <summary>Of several files of one student the one that earns most counts, the first by name among equals; all are accounted for.</summary>
    private static StudentGrade Settle(
        DealtStudent student,
        Dictionary<string, List<StudentGrade>> graded,
        Dictionary<string, List<ReturnedFile>> unreadable,
        List<UnmatchedFile> unmatched)
    {
        var broken = unreadable.GetValueOrDefault(student.Student.Id) ?? [];
        if (graded.GetValueOrDefault(student.Student.Id) is not { } versions)
        {
            if (broken.Count == 0) return new(student, GradeStatus.Missing, null, [], []);
            unmatched.AddRange(broken.Skip(1).Select(file => new UnmatchedFile(file.Path, $"{file.Refusal} It seems to be {student.Student.Name}'s.")));
            return new(student, GradeStatus.Unreadable, broken[0].Path, [], [.. broken.Select(UnreadableFlag)]);
        }

        var best = versions.MaxBy(version => version.Points)!;
        unmatched.AddRange(versions.Where(version => version != best).Select(version =>
            new UnmatchedFile(version.File!, $"Another version of {student.Student.Name}'s work; {best.File} was graded because it earns most.")));
        unmatched.AddRange(broken.Select(file =>
            new UnmatchedFile(file.Path, $"{file.Refusal} It seems to be {student.Student.Name}'s, of whom {best.File} was graded.")));
        IReadOnlyList<Flag> several = versions.Count + broken.Count == 1
            ? []
            : [new(FlagCodes.SeveralFiles, $"{versions.Count + broken.Count} files came from this student: {string.Join(", ", versions.Select(version => version.File).Concat(broken.Select(file => file.Path)))}. {best.File} was graded.")];
        return best with { Flags = [.. best.Flags, .. several] };
    }

    private static Flag UnreadableFlag(ReturnedFile file) => new(FlagCodes.UnreadableFile, $"{file.Path}: {file.Refusal}");

    private static void Add<T>(Dictionary<string, List<T>> lists, string key, T item)
    {
        if (!lists.TryGetValue(key, out var list)) lists[key] = list = [];
        list.Add(item);
    }
}
