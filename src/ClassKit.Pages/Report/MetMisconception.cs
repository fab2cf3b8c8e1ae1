using ClassKit.Exercises.Authoring;
using ClassKit.Grading.Results;

namespace ClassKit.Pages.Report;

/// <summary>A misconception that students of the class met.</summary>
/// <param name="Part">Where.</param>
/// <param name="Misconception">Which.</param>
/// <param name="Students">Who, in roster order.</param>
public sealed record MetMisconception(ReportPart Part, Misconception Misconception, IReadOnlyList<string> Students)
{
    /// <summary>What one of them typed, a formula with its <c>=</c>; null where all of them typed numbers.</summary>
    public string? Example { get; init; }

    /// <summary>All that were met, those with the most students first.</summary>
    public static IReadOnlyList<MetMisconception> Of(IReadOnlyList<ReportPart> parts, ClassGrades grades)
    {
        var met = new Dictionary<(string, string, string), Met>();
        foreach (var student in grades.Students)
        {
            foreach (var answer in student.Answers)
            {
                if (answer.Misconception is not { } misconception)
                    continue;
                var key = (answer.Exercise.Id, answer.Part.Id, misconception.Id);
                if (!met.TryGetValue(key, out var known))
                    met[key] = known = new();
                known.Take(student.Who.Shown, answer.Formula);
            }
        }
        return
        [
            .. parts
                .SelectMany(part =>
                    part.Summary.Misconceptions.Select(known =>
                        (
                            Part: part,
                            known.Misconception,
                            Met: met[(part.Summary.Exercise.Id, part.Summary.Part.Id, known.Misconception.Id)]
                        )
                    )
                )
                .Select(one => new MetMisconception(one.Part, one.Misconception, one.Met.Students) { Example = one.Met.Shortest })
                .OrderByDescending(one => one.Students.Count),
        ];
    }

    private sealed class Met
    {
        public List<string> Students { get; } = [];

        /// <summary>The shortest that was typed: what is wrong with it is seen soonest.</summary>
        public string? Shortest { get; private set; }

        public void Take(string student, string? formula)
        {
            Students.Add(student);
            if (formula is not null && (Shortest is null || formula.Length < Shortest.Length))
                Shortest = formula;
        }
    }
}
