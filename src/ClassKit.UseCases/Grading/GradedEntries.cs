using System.Collections;

namespace ClassKit.UseCases.Grading;

/// <summary>
/// The students of grades.json: made one by one while they are written; when they are read, what is said of each answer is packed away
/// until it is asked for.
/// </summary>
internal sealed class GradedEntries : ICollection<GradesDocument.GradedEntry>, IReadOnlyList<GradesDocument.GradedEntry>
{
    private readonly IReadOnlyList<GradesDocument.GradedEntry> _entries;

    /// <summary>None yet.</summary>
    public GradedEntries() => _entries = new List<GradesDocument.GradedEntry>();

    /// <summary>Entries that are made when they are asked for.</summary>
    public GradedEntries(IReadOnlyList<GradesDocument.GradedEntry> made) => _entries = made;

    public int Count => _entries.Count;

    public bool IsReadOnly => _entries is not List<GradesDocument.GradedEntry>;

    public GradesDocument.GradedEntry this[int index] => _entries[index];

    public void Add(GradesDocument.GradedEntry item) =>
        ((List<GradesDocument.GradedEntry>)_entries).Add(
            item with
            {
                Answers = new PackedEntries<GradesDocument.AnswerEntry>(item.Answers),
                Flags = item.Flags.Count == 0 ? [] : new PackedEntries<GradesDocument.FlagEntry>(item.Flags),
                Fresh = item.Fresh is null ? null : new PackedEntries<GradesDocument.UsedEntry>(item.Fresh),
            }
        );

    public IEnumerator<GradesDocument.GradedEntry> GetEnumerator() => _entries.GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();

    public void Clear() => throw new NotSupportedException();

    public bool Contains(GradesDocument.GradedEntry item) => throw new NotSupportedException();

    public void CopyTo(GradesDocument.GradedEntry[] array, int arrayIndex)
    {
        foreach (var entry in this)
            array[arrayIndex++] = entry;
    }

    public bool Remove(GradesDocument.GradedEntry item) => throw new NotSupportedException();
}
