using System.Collections.Concurrent;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Dealing;
using ClassKit.Exercises.Draws;
using ClassKit.Exercises.Randomness;
using ClassKit.Exercises.Variants;
using ClassKit.Grading.Judging.Trials;
using ClassKit.Grading.Results;

namespace ClassKit.Grading.Judging;

/// <summary>The fresh inputs of a class: those on record where they still fit the exercises, else drawn by the deal's seed.</summary>
internal sealed class ClassInputs
{
    private readonly DealtClass _dealt;
    private readonly Dictionary<string, FreshInputs> _pools = [];
    private readonly Dictionary<string, TrialInputs[]> _fresh = [];
    private readonly Dictionary<string, Lazy<DrawnInputs>> _drawn = [];
    private readonly ConcurrentDictionary<(string Student, string Exercise), IReadOnlyList<int>> _places = new();

    public ClassInputs(DealtClass dealt, JudgeRecord? recorded)
    {
        _dealt = dealt;
        Version = recorded is { Version: >= JudgeRecord.EarliestKept and < JudgeRecord.CurrentVersion }
            ? recorded.Version
            : JudgeRecord.CurrentVersion;
        var pools = (recorded?.Pools ?? []).ToDictionary(pool => pool.Exercise, pool => pool.Inputs);
        var choices = (recorded?.Choices ?? []).ToLookup(choice => choice.Exercise);
        foreach (var exercise in dealt.Exercises)
        {
            var known = pools.TryGetValue(exercise.Id, out var inputs) ? FreshInputs.Recorded(exercise, inputs) : null;
            var pool = known ?? new FreshInputs(exercise, SeededDraws.For(dealt.Seed, "fresh", exercise.Id));
            _pools[exercise.Id] = pool;
            _fresh[exercise.Id] = [.. pool.All.Select(variant => new TrialInputs(variant))];
            _drawn[exercise.Id] = new(() =>
                new([.. dealt.Students.Where(student => student.Has(exercise.Id)).Select(student => student.Of(exercise.Id)), .. pool.All])
            );
            foreach (
                var choice in choices[exercise.Id]
                    .Where(choice =>
                        known is not null && choice.Places.Count > 0 && choice.Places.All(place => place >= 0 && place < pool.All.Count)
                    )
            )
                _places[(choice.Student, exercise.Id)] = choice.Places;
        }
    }

    /// <summary>
    /// Whose rules decide: those of the record, if we still have them, so that nobody's grade changes because the program did.
    /// </summary>
    public int Version { get; }

    /// <summary>
    /// What tells two formulas of an exercise apart: the same for every student; one that was dealt where there are no others.
    /// </summary>
    public IReadOnlyList<Variant> ToTellApart(Exercise exercise) =>
        All(exercise) is { Count: > 0 } all ? all : [.. Drawn(exercise).All.Take(1)];

    /// <summary>All that were drawn for an exercise.</summary>
    public IReadOnlyList<Variant> All(Exercise exercise) => _pools[exercise.Id].All;

    /// <summary>Those together with what was dealt to the class: the same for every student of it.</summary>
    public DrawnInputs Drawn(Exercise exercise) => _drawn[exercise.Id].Value;

    /// <summary>Those that a student's workbook is tried with.</summary>
    public IReadOnlyList<TrialInputs> For(DealtStudent student, Exercise exercise) =>
        [.. Places(student, exercise).Select(place => _fresh[exercise.Id][place])];

    /// <summary>What goes on record.</summary>
    /// <param name="graded">Whose workbooks were judged.</param>
    public JudgeRecord ToRecord(IEnumerable<DealtStudent> graded) =>
        new(
            Version,
            [
                .. _dealt.Exercises.Select(exercise => new JudgeRecord.Pool(
                    exercise.Id,
                    [.. All(exercise).Select(variant => variant.Givens)]
                )),
            ]
        )
        {
            Choices =
            [
                .. graded.SelectMany(student =>
                    _dealt
                        .ExercisesOf(student)
                        .Select(exercise => new JudgeRecord.Choice(student.Who.Id, exercise.Id, Places(student, exercise)))
                ),
            ],
        };

    private IReadOnlyList<int> Places(DealtStudent student, Exercise exercise) =>
        _places.GetOrAdd((student.Who.Id, exercise.Id), _ => _pools[exercise.Id].PlacesFor(student.GivensOf(exercise.Id)));
}
