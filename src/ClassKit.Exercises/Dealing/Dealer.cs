namespace ClassKit.Exercises;

/// <summary>Deals every student of a roster a variant of every exercise.</summary>
public static class Dealer
{
    /// <summary>Deals a class.</summary>
    /// <param name="lesson">The lesson's id.</param>
    /// <param name="lessonTitle">Its title.</param>
    /// <param name="exercises">At least one, laid out in this order.</param>
    /// <param name="marking">Frozen into the deal.</param>
    /// <param name="roster">Who gets a workbook.</param>
    /// <param name="seed">Decides every draw; each student and exercise has a stream of its own, so that adding an exercise changes no other.</param>
    public static DealResult Deal(
        string lesson, string lessonTitle, IReadOnlyList<Exercise> exercises, MarkingScheme marking, Roster roster, ulong seed)
    {
        ArgumentNullException.ThrowIfNull(exercises);
        ArgumentNullException.ThrowIfNull(roster);
        var layout = PracticeLayout.For(exercises);
        var variants = new List<Variant>[roster.Students.Count];
        for (var student = 0; student < variants.Length; student++) variants[student] = [];
        var problems = new List<string>();
        var notes = new List<string>();

        foreach (var exercise in exercises)
        {
            var taken = new HashSet<string>();
            var shared = 0;
            for (var student = 0; student < variants.Length; student++)
            {
                var random = SeededDraws.For(seed, "variant", exercise.Id, roster.Students[student].Id);
                var drawing = VariantDrawer.Draw(exercise, random, variant => taken.Add(VariantKey.Of(exercise, variant.Givens)));
                if (drawing is { Variant: null, MainReason: Drawing.Refused })
                {
                    // The space is smaller than the class: better a shared variant than none, as long as it is said.
                    shared++;
                    drawing = VariantDrawer.Draw(exercise, random);
                }
                if (drawing.Variant is not { } variant)
                {
                    problems.Add($"Exercise {exercise.Id}: no variant in {VariantDrawer.MostAttempts} draws, mostly because {drawing.MainReason}. Widen a given's range or change that rule.");
                    break;
                }
                variants[student].Add(variant);
            }
            if (shared > 0)
                notes.Add($"Exercise {exercise.Id}: {shared} students share a variant with someone else, because its givens allow only {taken.Count}. Widen a given's range to tell them apart.");
        }

        return problems.Count > 0
            ? new(null, problems, notes)
            : new(new(lesson, lessonTitle, roster.Cohort, seed, marking, exercises, Seat(layout, roster, variants)), problems, notes);
    }

    private static List<DealtStudent> Seat(PracticeLayout layout, Roster roster, List<Variant>[] variants) =>
    [
        .. roster.Students.Select((student, index) => new DealtStudent(
            student,
            $"workbooks/{student.Id}.xlsx",
            [.. variants[index].SelectMany(layout.GivensOf)],
            [.. variants[index].SelectMany(layout.AnswersOf)])),
    ];
}
