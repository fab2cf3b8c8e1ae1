using ClassKit.Exercises.Dealing;
using ClassKit.Exercises.Marking;
using ClassKit.Grading.Findings;
using ClassKit.Grading.Results;

namespace ClassKit.Grading.Intake;

/// <summary>Chooses among the files of one student as the marking scheme says, and says of each what became of it.</summary>
internal sealed class VersionChooser(DealtClass dealt)
{
    private readonly MarkingScheme _marking = dealt.Marking;

    /// <summary>More of a student's stray workbooks than these nobody wants to read of; all of them are accounted for one by one.</summary>
    private const int MostFlagged = 8;

    /// <summary>The grade that counts, and every file accounted for.</summary>
    /// <param name="student">Whose files they are.</param>
    /// <param name="files">All of theirs, if there are any; leftovers are not among them.</param>
    public (StudentGrade Grade, IReadOnlyList<AccountedFile> Files) Choose(DealtStudent student, IReadOnlyList<JudgedFile> files)
    {
        List<JudgedFile> workbooks = [.. files.Where(file => file.IsGraded && !file.IsPaper)];
        var order = VersionOrder.Of(_marking.Versions, workbooks);
        var versions = workbooks.Order(order).ToList();
        var paper = files.FirstOrDefault(file => file.IsPaper);
        var refused = files.Where(file => !file.IsGraded && file.Other is null).ToList();
        List<AccountedFile> others =
        [
            .. refused.Select(file => file.AsUnread()),
            .. files
                .Where(file => file.Other is not null)
                .Select(file =>
                    file.As(FileFate.OtherDeal, new Uncounted.OfOtherDeal(file.Other!, dealt.LessonTitle, dealt.Identity?.Code))
                ),
        ];
        var strays = OfOtherDeals(others);
        if (versions.Count == 0 && paper is null)
            return (Ungraded(student, refused, strays), others);

        // Paper bears no time of its own, so that whatever versions are chosen by, it stands against the chosen one by points alone.
        var counts = paper is not null && (versions.Count == 0 || paper.Points > versions[0].Points) ? paper : versions[0];
        var grade = counts.Grade!;
        var beside =
            paper is not null && versions.Concat(refused).FirstOrDefault() is { } file
                ? [new Flag.PaperBeside(student.Who, file.Name, paper.Name, counts == paper)]
                : (IEnumerable<Flag>)[];
        var several =
            versions.Count + refused.Count > 1 && counts != paper
                ? [Several(student, counts, [.. versions, .. refused])]
                : (IEnumerable<Flag>)[];
        return (
            grade with
            {
                Flags =
                [
                    .. grade.Flags,
                    .. versions
                        .Where(version => version != counts)
                        .Select(version => version.NamedAs is { } named ? new Flag.UnderOtherName(version.Name, named, student.Who) : null)
                        .OfType<Flag>(),
                    .. several,
                    .. beside,
                    .. strays,
                ],
            },
            [
                counts.As(counts == paper ? FileFate.Paper : FileFate.Graded),
                .. versions
                    .Append(paper)
                    .OfType<JudgedFile>()
                    .Where(version => version != counts)
                    .Select(version =>
                        version.As(
                            FileFate.OtherVersion,
                            Why(student, version, version.IsPaper || version == versions[0] ? counts : versions[0], order)
                        )
                    ),
                .. others,
            ]
        );
    }

    private StudentGrade Ungraded(DealtStudent student, List<JudgedFile> refused, IEnumerable<Flag> strays)
    {
        var grade =
            refused.Count == 0
                ? new StudentGrade(student.Who, GradeStatus.Missing, null, [], [])
                : new(
                    student.Who,
                    GradeStatus.Unreadable,
                    refused[0].Path,
                    [],
                    [.. refused.Select(file => new Flag.UnreadableFile(file.Name, file.Refusal))]
                );
        return grade with { Rule = _marking.Total, Flags = [.. grade.Flags, .. strays] };
    }

    private static List<Flag> OfOtherDeals(IEnumerable<AccountedFile> files) =>
        [
            .. files
                .Where(file => file.Why is Uncounted.OfOtherDeal)
                .Take(MostFlagged)
                .Select(file => new Flag.OfOtherDeal(new(file.File), (Uncounted.OfOtherDeal)file.Why!)),
        ];

    private Uncounted Why(DealtStudent student, JudgedFile version, JudgedFile counts, VersionOrder order)
    {
        if (version.Digest is not null && version.Digest == counts.Digest)
            return new Uncounted.Copy(counts.Name);
        var sameKind = !version.IsPaper && !counts.IsPaper;
        WhyThatVersion because = (sameKind && order.By == VersionChoice.Newest, version.Saved, counts.Saved) switch
        {
            _ when version.IsEmpty && !counts.IsEmpty => new WhyThatVersion.OtherIsEmpty(),
            _ when version.NamedAs is { } named && counts.NamedAs is null => new WhyThatVersion.OtherIsNamed(named),
            (true, { } saved, { } last) when saved != last => new WhyThatVersion.Newer(last, saved),
            _ when version.Points == counts.Points => new WhyThatVersion.EarnsAsMuch(),
            _ when sameKind && _marking.Versions != order.By => new WhyThatVersion.NotAllSayWhen(),
            _ => new WhyThatVersion.EarnsMost(),
        };
        return new Uncounted.OtherVersion(student.Who, version.Points!.Value, version.OutOf!.Value, counts.Name, because);
    }

    private static Flag.SeveralFiles Several(DealtStudent student, JudgedFile counts, IReadOnlyList<JudgedFile> files) =>
        new(student.Who, [.. files.OrderBy(file => file.Path, StringComparer.Ordinal).Select(file => file.Name)], counts.Name);
}
