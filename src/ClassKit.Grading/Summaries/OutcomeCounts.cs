using ClassKit.Exercises.Authoring;
using ClassKit.Grading.Findings;
using ClassKit.Grading.Results;

namespace ClassKit.Grading.Summaries;

/// <summary>Counts what became of the answers to one part while they pass by.</summary>
internal sealed class OutcomeCounts
{
    private readonly Dictionary<Outcome, int> _outcomes = Enum.GetValues<Outcome>().ToDictionary(outcome => outcome, _ => 0);
    private readonly Dictionary<string, (Misconception First, int Students)> _met = [];
    private int _explained;
    private int _rounded;
    private int _marked;
    private int _markedInFull;

    /// <summary>The counts of every part that anybody answered, by the ids of exercise and part.</summary>
    public static Dictionary<(string Exercise, string Part), OutcomeCounts> Of(IEnumerable<StudentGrade> students)
    {
        var counts = new Dictionary<(string Exercise, string Part), OutcomeCounts>();
        foreach (var (student, answer) in students.SelectMany(student => student.Answers.Select(answer => (student, answer))))
        {
            var key = (answer.Exercise.Id, answer.Part.Id);
            if (!counts.TryGetValue(key, out var part))
                counts[key] = part = new();
            part.Add(answer, IsAnothers(student, answer));
        }
        return counts;
    }

    /// <summary>The part as it was counted.</summary>
    public PartSummary Of(Exercise exercise, Part part) =>
        new(
            exercise,
            part,
            _outcomes,
            [.. _met.Values.OrderByDescending(met => met.Students).ThenBy(met => met.First.Id, StringComparer.Ordinal)]
        )
        {
            Explained = _explained,
            Rounded = _rounded,
            Marked = _marked,
            MarkedInFull = _markedInFull,
        };

    /// <summary>
    /// True for a typed number that is right for another student's numbers, by a fact that stands: it came from there, and that a wrong
    /// turn gives it too says nothing of what was thought.
    /// </summary>
    private static bool IsAnothers(StudentGrade student, AnswerGrade answer) =>
        answer.Formula is null
        && student.Flags.OfType<Flag.FitsAnotherVariant>().Any(flag => flag.Parts.Contains((answer.Exercise.Id, answer.Part.Id)));

    private void Add(AnswerGrade answer, bool isAnothers)
    {
        _outcomes[answer.Outcome]++;
        if (
            answer is
            {
                Outcome: Outcome.Incorrect,
                Findings: [AnswerFinding.RoundsAnswer or AnswerFinding.RoundsEarlier or AnswerFinding.RoundsWithin, ..]
            }
        )
            _rounded++;
        if (answer.IsExplained)
            _explained++;
        if (answer is { Outcome: Outcome.Unsupported, IsUndecided: false })
            (_marked, _markedInFull) = (_marked + 1, _markedInFull + (answer.ShowsMethod ? 1 : 0));
        if (!isAnothers && answer.Misconception is { } met)
            _met[met.Id] = _met.TryGetValue(met.Id, out var known) ? (known.First, known.Students + 1) : (met, 1);
    }
}
