using System.Collections;
using ClassKit.Exercises.Cohorts;

namespace ClassKit.UseCases.Dealing;

/// <summary>
/// The students of dealt.json: made one by one while they are written; when they are read, of each no more is kept than is a student's own.
/// </summary>
/// <remarks>
/// The lists of a class name the same cells over and over. Places are kept once, values for each student, and an entry is put together when
/// it is asked for.
/// </remarks>
internal sealed class StudentEntries : ICollection<DealtDocument.StudentEntry>, IReadOnlyList<DealtDocument.StudentEntry>
{
    private readonly IReadOnlyList<DealtDocument.StudentEntry>? _made;
    private readonly List<Own> _read = [];
    private readonly List<DealtDocument.StudentEntry> _places = [];

    /// <summary>None yet.</summary>
    public StudentEntries() { }

    /// <summary>Entries that are made when they are asked for.</summary>
    public StudentEntries(IReadOnlyList<DealtDocument.StudentEntry> made) => _made = made;

    public int Count => _made?.Count ?? _read.Count;

    public bool IsReadOnly => _made is not null;

    public DealtDocument.StudentEntry this[int index] => _made is null ? Whole(_read[index]) : _made[index];

    public void Add(DealtDocument.StudentEntry item)
    {
        var at = _places.FindIndex(known => HasSamePlaces(known, item));
        if (at < 0)
        {
            at = _places.Count;
            _places.Add(item);
        }
        _read.Add(
            new(
                item.Id,
                item.Name,
                item.Workbook,
                item.SharesName,
                item.Arrangement,
                at,
                [.. item.Givens.Select(given => given.Value)],
                [.. item.Answers.Select(answer => answer.Expected)]
            )
        );
    }

    /// <summary>Entries among which is every place that any of them names.</summary>
    public IEnumerable<DealtDocument.StudentEntry> Places => _made ?? (IEnumerable<DealtDocument.StudentEntry>)_places;

    /// <summary>Who they are, without what was dealt to them.</summary>
    public IEnumerable<Student> Who() =>
        _made?.Select(entry => Known(entry.Id, entry.Name, entry.SharesName))
        ?? _read.Select(own => Known(own.Id, own.Name, own.SharesName));

    public IEnumerator<DealtDocument.StudentEntry> GetEnumerator() => _made?.GetEnumerator() ?? _read.Select(Whole).GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();

    public void Clear() => throw new NotSupportedException();

    public bool Contains(DealtDocument.StudentEntry item) => throw new NotSupportedException();

    public void CopyTo(DealtDocument.StudentEntry[] array, int arrayIndex)
    {
        foreach (var entry in this)
            array[arrayIndex++] = entry;
    }

    public bool Remove(DealtDocument.StudentEntry item) => throw new NotSupportedException();

    private static Student Known(string id, string name, bool sharesName) => sharesName ? Namesakes.WithId(new(id, name)) : new(id, name);

    private static bool HasSamePlaces(DealtDocument.StudentEntry one, DealtDocument.StudentEntry other) =>
        one.Givens.Count == other.Givens.Count
        && one.Answers.Count == other.Answers.Count
        && one.Givens.Zip(other.Givens).All(pair => pair.First == pair.Second with { Value = pair.First.Value })
        && one.Answers.Zip(other.Answers).All(pair => pair.First == pair.Second with { Expected = pair.First.Expected });

    private DealtDocument.StudentEntry Whole(Own own) =>
        new(
            own.Id,
            own.Name,
            own.Workbook,
            [.. _places[own.Places].Givens.Zip(own.Values, (place, value) => place with { Value = value })],
            [.. _places[own.Places].Answers.Zip(own.Expected, (place, expected) => place with { Expected = expected })]
        )
        {
            SharesName = own.SharesName,
            Arrangement = own.Arrangement,
        };

    /// <summary>A student's own.</summary>
    private sealed record Own(
        string Id,
        string Name,
        string Workbook,
        bool SharesName,
        DealtDocument.ArrangementEntry? Arrangement,
        int Places,
        decimal[] Values,
        double[] Expected
    );
}
