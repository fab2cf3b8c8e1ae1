using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Cohorts;
using ClassKit.Exercises.Draws;
using ClassKit.Exercises.Identity;
using ClassKit.Exercises.Marking;
using ClassKit.Exercises.Randomness;
using ClassKit.Exercises.Variants;

namespace ClassKit.Exercises.Dealing;

/// <summary>Deals every student of a roster a variant of every exercise, or of those of their own set.</summary>
public static class Dealer
{
    /// <summary>Deals a class.</summary>
    /// <param name="lesson">The lesson's id.</param>
    /// <param name="lessonTitle">Its title.</param>
    /// <param name="exercises">At least one, laid out in this order; with sets, those that are in any.</param>
    /// <param name="marking">Frozen into the deal.</param>
    /// <param name="roster">Who gets a workbook.</param>
    /// <param name="seed">Decides every draw; each student and exercise has a stream of its own, so that adding an exercise changes no
    /// other.</param>
    /// <param name="settings">Null for <see cref="DealSettings.Usual"/>.</param>
    /// <param name="watcher">Told before the first variant and after each; null for nobody.</param>
    public static DealResult Deal(
        string lesson,
        string lessonTitle,
        IReadOnlyList<Exercise> exercises,
        MarkingScheme marking,
        Roster roster,
        ulong seed,
        DealSettings? settings = null,
        IProgress<DrawProgress>? watcher = null
    )
    {
        ArgumentNullException.ThrowIfNull(exercises);
        ArgumentNullException.ThrowIfNull(roster);
        settings ??= DealSettings.Usual;
        var variants = new List<Variant>[roster.Students.Count];
        for (var student = 0; student < variants.Length; student++)
            variants[student] = [];
        var problems = new List<DealProblem>();
        var shared = new List<SharedVariants>();

        var before = settings.Before?.Students.ToDictionary(student => student.Who.Id) ?? [];
        bool Draws(Student who, Exercise exercise) => !before.ContainsKey(who.Id) && settings.Gives(who, exercise);
        var (done, total) = (0, roster.Students.Sum(who => exercises.Count(exercise => Draws(who, exercise))));
        watcher?.Report(new(done, total));
        foreach (var hand in exercises.Select(exercise => new ExerciseHand(exercise, before.Values)))
        {
            for (var student = 0; student < variants.Length; student++)
            {
                var who = roster.Students[student];
                if (!Draws(who, hand.Exercise))
                    continue;
                var random = SeededDraws.For(seed, StreamOf(settings), hand.Exercise.Id, who.Id);
                if (hand.Next(random, variant => settings.Avoid.Has(who, variant), out var problem) is not { } variant)
                {
                    problems.Add(problem!);
                    break;
                }
                // Drawn even for who leaves it out, so that nobody else's numbers hang on what is arranged with one.
                if (!roster.ArrangementOf(who.Id).LeavesOut.Contains(hand.Exercise.Id))
                    variants[student].Add(variant);
                watcher?.Report(new(++done, total));
            }
            if (hand.Shared > 0 && !hand.Exercise.HasOneAnswer())
                shared.Add(new(hand.Exercise, hand.Shared, hand.Different));
        }

        return problems.Count > 0
            ? new(null, problems, shared)
            : new(
                new(lesson, lessonTitle, roster.Cohort, seed, marking, exercises, Seat(roster, exercises, variants, before))
                {
                    Identity = DealIdentity.Of(lesson, lessonTitle, roster.Cohort, seed, settings.Purpose, settings.Choice, exercises),
                    Purpose = settings.Purpose,
                    Replaces = settings.Replaces,
                    TimeZone = roster.TimeZone,
                    Plan = settings.Plan,
                    Paper = roster.Paper,
                },
                problems,
                shared
            );
    }

    /// <summary>Where a student's workbook goes within the dealt folder.</summary>
    public static string WorkbookOf(Student student)
    {
        ArgumentNullException.ThrowIfNull(student);
        return $"workbooks/{student.Id}.xlsx";
    }

    private static string StreamOf(DealSettings settings) =>
        settings.Purpose switch
        {
            DealPurpose.Graded when settings.Replaces is { } replaced => $"resit of {replaced.Digest}",
            DealPurpose.Graded or DealPurpose.Rehearsal => "variant",
            DealPurpose.Practice => "practice",
            DealPurpose.FollowUp => "follow-up",
        };

    private static List<DealtStudent> Seat(
        Roster roster,
        IReadOnlyList<Exercise> exercises,
        List<Variant>[] variants,
        Dictionary<string, DealtStudent> before
    ) =>
        [
            .. Namesakes
                .ToldApart(roster.Students)
                .Select(
                    (student, index) =>
                        Arranged(
                            student,
                            before.GetValueOrDefault(student.Id) ?? new DealtStudent(student, WorkbookOf(student), variants[index]),
                            roster,
                            exercises
                        )
                ),
        ];

    private static DealtStudent Arranged(Student student, DealtStudent seat, Roster roster, IReadOnlyList<Exercise> exercises)
    {
        var arrangement = roster.ArrangementOf(seat.Who.Id);
        return seat with
        {
            // Somebody of the same name may have joined the class since the workbook was made.
            Who = student.Shown == student.Name ? seat.Who : Namesakes.WithId(seat.Who),
            LargePrint = arrangement.LargePrint,
            ExtraTime = arrangement.ExtraTime,
            Due = arrangement.Due?.In(roster.TimeZone),
            // Who holds a workbook keeps the exercises that are in it.
            LeavesOut = [.. exercises.Select(exercise => exercise.Id).Where(id => arrangement.LeavesOut.Contains(id) && !seat.Has(id))],
        };
    }
}
