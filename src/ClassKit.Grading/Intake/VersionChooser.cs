using System.Globalization;
using ClassKit.Exercises;

namespace ClassKit.Grading;

/// <summary>Chooses among the files of one student as the marking scheme says, and says of each what became of it.</summary>
internal sealed class VersionChooser(DealtClass dealt) : IComparer<JudgedFile>
{
    private readonly MarkingScheme _marking = dealt.Marking;

    /// <summary>More of a student's files than these nobody wants to read of; all of them are accounted for one by one.</summary>
    private const int MostNamed = 8;

    /// <summary>The grade that counts, and every file accounted for.</summary>
    /// <param name="student">Whose files they are.</param>
    /// <param name="files">At least none; leftovers are not among them.</param>
    public (StudentGrade Grade, IReadOnlyList<AccountedFile> Files) Choose(DealtStudent student, IReadOnlyList<JudgedFile> files)
    {
        var versions = files.Where(file => file.IsGraded).Order(this).ToList();
        var refused = files.Where(file => !file.IsGraded && file.Other is null).ToList();
        List<AccountedFile> others =
        [
            .. refused.Select(file => file.AsUnread()),
            .. files.Where(file => file.Other is not null).Select(file => file.As(FileFate.OtherDeal, OtherDealWords.Why(file.Other!, dealt))),
        ];
        var strays = OfOtherDeals(others);
        if (versions.Count == 0) return (Ungraded(student, refused, strays), others);

        var counts = versions[0];
        var grade = counts.Grade!;
        var several = versions.Count + refused.Count > 1 ? [Several(student, counts, [.. versions, .. refused])] : (IEnumerable<Flag>)[];
        return (grade with { Flags = [.. grade.Flags, .. several, .. strays] },
        [
            counts.As(FileFate.Graded),
            .. versions.Skip(1).Select(version => version.As(FileFate.OtherVersion, Why(student, version, counts))),
            .. others,
        ]);
    }

    /// <summary>The one that counts comes first. No two files are equal, since no two have the same path.</summary>
    public int Compare(JudgedFile? x, JudgedFile? y)
    {
        ArgumentNullException.ThrowIfNull(x);
        ArgumentNullException.ThrowIfNull(y);
        var (points, time) = (Nullable.Compare(y.Points, x.Points), Nullable.Compare(y.Changed, x.Changed));
        var (first, second) = _marking.Versions switch
        {
            VersionChoice.Best => (points, time),
            VersionChoice.Newest => (time, points),
        };
        return first != 0 ? first : second != 0 ? second : string.CompareOrdinal(x.Path, y.Path);
    }

    private StudentGrade Ungraded(DealtStudent student, List<JudgedFile> refused, IEnumerable<Flag> strays)
    {
        var grade = refused.Count == 0
            ? new StudentGrade(student, GradeStatus.Missing, null, [], [])
            : new(student, GradeStatus.Unreadable, refused[0].Path, [], [.. refused.Select(file => new Flag(FlagCodes.UnreadableFile, $"{file.Mention}: {file.Refusal}"))]);
        return grade with { Rule = _marking.Total, Flags = [.. grade.Flags, .. strays] };
    }

    private static List<Flag> OfOtherDeals(IEnumerable<AccountedFile> files) =>
        [.. files.Where(file => file.Fate == FileFate.OtherDeal).Take(MostNamed).Select(file => new Flag(FlagCodes.OtherDeal, $"{new FileMention(file.File)}: {file.Why}"))];

    private Sentence Why(DealtStudent student, JudgedFile version, JudgedFile counts)
    {
        if (version.Digest is not null && version.Digest == counts.Digest) return $"The same file as {counts.Mention}, byte for byte, which was graded.";
        var because = _marking.Versions switch
        {
            VersionChoice.Newest when version.Changed is null || counts.Changed is null => "it says when it was changed",
            VersionChoice.Newest when version.Changed != counts.Changed => $"it was changed last, {Day(counts.Changed)}, and this one {Day(version.Changed)}",
            _ when version.Points == counts.Points => "it earns as much",
            _ => "it earns most",
        };
        return $"Another version of {student.Student}'s work, worth {version.Points:0.##} of {version.OutOf:0.##} points; {counts.Mention} was graded because {because}.";
    }

    private static string Day(DateTime? time) => time is { } at ? at.ToString("yyyy-MM-dd HH:mm:ss", CultureInfo.InvariantCulture) : "at a time unknown";

    private static Flag Several(DealtStudent student, JudgedFile counts, IReadOnlyList<JudgedFile> files)
    {
        var others = files.Count > MostNamed ? $" and {files.Count - MostNamed} more" : "";
        return new(FlagCodes.SeveralFiles,
            $"{files.Count} files came from {student.Student}: {Sentence.List(files.OrderBy(file => file.Path, StringComparer.Ordinal).Take(MostNamed).Select(file => Sentence.Of(file.Mention)))}{others}. {counts.Mention} was graded.");
    }
}
