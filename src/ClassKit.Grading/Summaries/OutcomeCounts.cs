using ClassKit.Exercises.Authoring;
using ClassKit.Grading.Results;

namespace ClassKit.Grading.Summaries;

/// <summary>Counts what became of the answers to one part while they pass by.</summary>
internal sealed class OutcomeCounts
{
    private readonly Dictionary<Outcome, int> _outcomes = Enum.GetValues<Outcome>().ToDictionary(outcome => outcome, _ => 0);
    private readonly Dictionary<string, (Misconception First, int Students)> _met = [];

    /// <summary>The counts of every part that anybody answered, by the ids of exercise and part.</summary>
    public static Dictionary<(string Exercise, string Part), OutcomeCounts> Of(IEnumerable<StudentGrade> students)
    {
        var counts = new Dictionary<(string Exercise, string Part), OutcomeCounts>();
        foreach (var answer in students.SelectMany(student => student.Answers))
        {
            var key = (answer.Exercise.Id, answer.Part.Id);
            if (!counts.TryGetValue(key, out var part)) counts[key] = part = new();
            part.Add(answer);
        }
        return counts;
    }

    /// <summary>The part as it was counted.</summary>
    public PartSummary Of(Exercise exercise, Part part) =>
        new(exercise, part, _outcomes, [.. _met.Values.OrderByDescending(met => met.Students).ThenBy(met => met.First.Id, StringComparer.Ordinal)]);

    private void Add(AnswerGrade answer)
    {
        _outcomes[answer.Outcome]++;
        if (answer.Misconception is { } met) _met[met.Id] = _met.TryGetValue(met.Id, out var known) ? (known.First, known.Students + 1) : (met, 1);
    }
}
