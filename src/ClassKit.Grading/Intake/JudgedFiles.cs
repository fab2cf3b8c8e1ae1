using ClassKit.Exercises.Dealing;

namespace ClassKit.Grading.Intake;

/// <summary>
/// What was judged so far. Of each student's files only the one that counts keeps its answers, so that many versions take little memory.
/// </summary>
/// <remarks>Files may come from several threads and in any order; what is kept in the end is the same.</remarks>
public sealed class JudgedFiles
{
    private readonly VersionChooser _order;
    private readonly List<JudgedFile> _files = [];
    private readonly Dictionary<(string Student, bool IsPaper), JudgedFile> _counting = [];
    private readonly Lock _lock = new();

    internal JudgedFiles(DealtClass dealt) => _order = new(dealt);

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
            if (!_counting.TryGetValue((id, file.IsPaper), out var counting))
            {
                _counting[(id, file.IsPaper)] = file;
                return;
            }

            var isBetter = _order.Compare(file, counting) < 0;
            if (isBetter)
                _counting[(id, file.IsPaper)] = file;
            (isBetter ? counting : file).ForgetAnswers();
        }
    }
}
