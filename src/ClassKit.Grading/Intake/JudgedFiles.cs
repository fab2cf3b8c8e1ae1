using ClassKit.Exercises.Dealing;

namespace ClassKit.Grading.Intake;

/// <summary>
/// What was judged so far. Of each student's files only those that may come to count keep their answers, so that many versions take little
/// memory.
/// </summary>
/// <remarks>Files may come from several threads and in any order; what is kept in the end is the same.</remarks>
public sealed class JudgedFiles
{
    private readonly IReadOnlyList<VersionOrder> _orders;
    private readonly List<JudgedFile> _files = [];
    private readonly Dictionary<(string Student, bool IsPaper, VersionOrder By), JudgedFile> _counting = [];
    private readonly Lock _lock = new();

    internal JudgedFiles(DealtClass dealt) => _orders = VersionOrder.For(dealt.Marking.Versions);

    /// <summary>All of them, in the order in which they came.</summary>
    internal IReadOnlyList<JudgedFile> Files => _files;

    /// <summary>Takes up one more.</summary>
    public void Add(JudgedFile file)
    {
        ArgumentNullException.ThrowIfNull(file);
        lock (_lock)
        {
            _files.Add(file);
            if (file is not { IsGraded: true, Student.Who.Id: var id })
                return;
            List<JudgedFile> before = [];
            foreach (var order in _orders)
            {
                var counting = _counting.GetValueOrDefault((id, file.IsPaper, order));
                if (counting is not null && order.Compare(counting, file) < 0)
                    continue;
                _counting[(id, file.IsPaper, order)] = file;
                if (counting is not null)
                    before.Add(counting);
            }
            foreach (var other in before.Append(file).Where(other => !MayCount(id, other)))
                other.ForgetAnswers();
        }
    }

    private bool MayCount(string student, JudgedFile file) =>
        _orders.Any(order => _counting.GetValueOrDefault((student, file.IsPaper, order)) == file);
}
