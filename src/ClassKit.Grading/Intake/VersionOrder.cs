using ClassKit.Exercises.Marking;

namespace ClassKit.Grading.Intake;

/// <summary>
/// In which order the files of one student are taken for the one that counts; no two are equal, since no two have the same path.
/// </summary>
/// <remarks>
/// A workbook with nothing in it takes nobody's answers away, and one that came under another student's name takes the place of none that
/// did not. Newer is what says of itself that it was saved later: a folder's dates change whenever files are copied or unpacked.
/// </remarks>
internal sealed class VersionOrder(VersionChoice by) : IComparer<JudgedFile>
{
    /// <summary>The orders by which a student's files may have to be chosen where the marking scheme has this choice.</summary>
    public static IReadOnlyList<VersionOrder> For(VersionChoice by) =>
        by == VersionChoice.Best ? [new(by)] : [new(by), new(VersionChoice.Best)];

    /// <summary>
    /// The order that fits these versions: by time only where all that could count say when they were saved, and by clocks that can be
    /// compared, else by what they earn.
    /// </summary>
    public static VersionOrder Of(VersionChoice by, IReadOnlyList<JudgedFile> versions) =>
        by == VersionChoice.Newest
        && versions.Count > 0
        && InFront(versions).All(file => file.Saved is not null)
        && InFront(versions).Select(file => file.Saved!.Value.Kind).Distinct().Count() == 1
            ? new(by)
            : new(VersionChoice.Best);

    /// <summary>What the versions are told apart by here.</summary>
    public VersionChoice By { get; } = by;

    /// <summary>The one that counts comes first.</summary>
    public int Compare(JudgedFile? x, JudgedFile? y)
    {
        ArgumentNullException.ThrowIfNull(x);
        ArgumentNullException.ThrowIfNull(y);
        var rank = Rank(x).CompareTo(Rank(y));
        var (points, time) = (Nullable.Compare(y.Points, x.Points), Nullable.Compare(y.Saved, x.Saved));
        var (first, second) = By == VersionChoice.Newest ? (time, points) : (points, time);
        return rank != 0 ? rank
            : first != 0 ? first
            : second != 0 ? second
            : string.CompareOrdinal(x.Path, y.Path);
    }

    private static IEnumerable<JudgedFile> InFront(IReadOnlyList<JudgedFile> versions)
    {
        var front = versions.Min(Rank);
        return versions.Where(file => Rank(file) == front);
    }

    private static (bool IsEmpty, bool IsOfOther) Rank(JudgedFile file) => (file.IsEmpty, file.NamedAs is not null);
}
