using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Dealing;
using ClassKit.Grading.Results;

namespace ClassKit.Grading.FollowUps;

/// <summary>
/// Chooses what a student practises after grading: by the skills on which points were lost, aimed at the misconceptions met.
/// </summary>
/// <remarks>
/// Skills come in the order of the points lost. First each gets the exercise on which most was lost; then, while time is left, another of
/// the skill: one step more guided where at least half was lost, else of the same level, and rather one that knows a misconception of the
/// same name as one that the student met.
/// </remarks>
public static class FollowUpChooser
{
    /// <summary>A student who lost this share of what a skill's exercises are worth takes a step back to a more guided one.</summary>
    private const decimal StepBack = 0.5m;

    /// <summary>Chooses.</summary>
    /// <param name="dealt">What was graded.</param>
    /// <param name="record">What became of the student's answers.</param>
    /// <param name="pool">Exercises to draw from besides those dealt; of equal ids the pool's counts.</param>
    /// <param name="minutes">The most time it may take, except that one exercise is always chosen where points were lost.</param>
    /// <returns>In the order to practise, a skill's more guided exercises first; empty if nothing was lost.</returns>
    public static IReadOnlyList<FollowUpExercise> Choose(DealtClass dealt, StudentGrade record, IReadOnlyList<Exercise> pool, int minutes)
    {
        ArgumentNullException.ThrowIfNull(dealt);
        ArgumentNullException.ThrowIfNull(record);
        ArgumentNullException.ThrowIfNull(pool);
        var skills = dealt
            .Exercises.Select(exercise => new Result(exercise, [.. record.Answers.Where(answer => answer.Exercise.Id == exercise.Id)]))
            .Where(result => result.Lost > 0)
            .GroupBy(result => result.Exercise.Skill)
            .Select(skill => new Need(
                [.. skill.OrderByDescending(result => result.Lost)],
                [
                    .. pool.UnionBy(dealt.Exercises, exercise => exercise.Id)
                        // The author may call the skill of an exercise otherwise by now: what was missed can be tried again all the same.
                        .Select(exercise =>
                            skill.Any(result => result.Exercise.Id == exercise.Id) ? exercise with { Skill = skill.Key } : exercise
                        )
                        .Where(exercise => exercise.Skill == skill.Key),
                ]
            ))
            .OrderByDescending(need => need.Lost)
            .ToList();
        var chosen = new List<FollowUpExercise>();
        foreach (
            var candidates in (IEnumerable<FollowUpExercise>[])
                [skills.SelectMany(need => need.Again()), skills.SelectMany(need => need.Another())]
        )
        {
            foreach (var candidate in candidates)
            {
                if (chosen.Count == 0 || chosen.Sum(one => one.Exercise.Minutes) + candidate.Exercise.Minutes <= minutes)
                    chosen.Add(candidate);
            }
        }
        return [.. skills.SelectMany(need => chosen.Where(one => one.Exercise.Skill == need.Skill).OrderBy(one => one.Exercise.Level))];
    }

    /// <summary>One exercise as the student did it.</summary>
    private sealed record Result(Exercise Exercise, IReadOnlyList<AnswerGrade> Answers)
    {
        public decimal Lost { get; } = Answers.Sum(answer => answer.OutOf - answer.Points);

        /// <summary>The misconceptions met, as the exercise words them.</summary>
        public IReadOnlyList<Misconception> Met { get; } =
        [
            .. Answers
                .Where(answer => answer.Misconception is not null && answer.Points < answer.OutOf)
                .Select(answer =>
                    Exercise
                        .Parts.FirstOrDefault(part => part.Id == answer.Part.Id)
                        ?.Misconceptions.FirstOrDefault(known => known.Id == answer.Misconception!.Id)
                )
                .OfType<Misconception>(),
        ];
    }

    /// <summary>One skill on which points were lost.</summary>
    /// <param name="Results">The exercises on which they were lost, most first.</param>
    /// <param name="Candidates">All exercises of the skill.</param>
    private sealed record Need(IReadOnlyList<Result> Results, IReadOnlyList<Exercise> Candidates)
    {
        public string Skill => Results[0].Exercise.Skill;

        public decimal Lost => Results.Sum(result => result.Lost);

        private Result Worst => Results[0];

        private ExerciseLevel Wanted =>
            Worst.Lost < StepBack * Worst.Answers.Sum(answer => answer.OutOf) || Worst.Exercise.Level == ExerciseLevel.Guided
                ? Worst.Exercise.Level
                : Worst.Exercise.Level - 1;

        public IEnumerable<FollowUpExercise> Again()
        {
            yield return For(Candidates.First(exercise => exercise.Id == Worst.Exercise.Id), isAgain: true);
        }

        public IEnumerable<FollowUpExercise> Another() =>
            Candidates
                .Where(exercise => exercise.Id != Worst.Exercise.Id)
                .OrderBy(exercise => Math.Abs(exercise.Level - Wanted))
                .ThenByDescending(Knows)
                .ThenBy(exercise => exercise.Minutes)
                .ThenBy(exercise => exercise.Id, StringComparer.Ordinal)
                .Take(1)
                .Select(exercise => For(exercise, isAgain: Results.Any(result => result.Exercise.Id == exercise.Id)));

        private FollowUpExercise For(Exercise exercise, bool isAgain) =>
            new(exercise, Lost, isAgain, [.. Results.Where(result => result.Exercise.Id == exercise.Id).SelectMany(result => result.Met)]);

        /// <summary>
        /// True if the exercise knows a misconception by the name of one that was met. Names such as “divided” are shared by wrong turns
        /// that are alike.
        /// </summary>
        private bool Knows(Exercise exercise)
        {
            var known = exercise.Parts.SelectMany(part => part.Misconceptions).Select(misconception => misconception.Id).ToHashSet();
            return Results.SelectMany(result => result.Met).Any(met => known.Contains(met.Id));
        }
    }
}
