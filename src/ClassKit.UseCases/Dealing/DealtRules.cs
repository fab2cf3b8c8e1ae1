using ClassKit.CellFormulas.Formulas;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Cohorts;
using ClassKit.Exercises.Dealing;
using ClassKit.Exercises.Layout;
using ClassKit.Wording.Cohorts;

namespace ClassKit.UseCases.Dealing;

/// <summary>
/// What must hold of a deal that was read from a file, by the rules that rosters and exercises keep: grading relies on it.
/// </summary>
internal static class DealtRules
{
    /// <summary>As many as a cell of a workbook can hold.</summary>
    private const int MostLetters = 32_767;

    /// <summary>Everything that does not hold, each with its place.</summary>
    /// <param name="document">What stands in the file.</param>
    /// <param name="dealt">The deal that it was read as.</param>
    public static IEnumerable<string> Broken(DealtDocument document, DealtClass dealt)
    {
        var broken = OfClass(dealt)
            .Concat(dealt.Exercises.SelectMany(exercise => OfExercise(exercise).Select(what => $"exercise {Shown(exercise.Id)}: {what}")))
            .ToList();
        if (broken.Count > 0)
            return broken;
        // What students were dealt is held against exercises that are sound themselves.
        var layout = dealt.LayOut();
        if (OfSheets(layout) is { } wrong)
            return [wrong];
        return dealt
            .Students.Zip(document.Students)
            .SelectMany(pair =>
                OfStudent(pair.First)
                    .Concat(DealtLists.Broken(layout, pair.First, pair.Second))
                    .Select(what => $"student {Shown(pair.First.Who.Id)}: {what}")
            );
    }

    private static IEnumerable<string> OfClass(DealtClass dealt)
    {
        if (dealt.Exercises.Count == 0)
            yield return "it has no exercises";
        foreach (
            var (name, text) in new[]
            {
                ("lesson", dealt.Lesson),
                ("lesson title", dealt.LessonTitle),
                ("marking scheme", dealt.Marking.Id),
                ("marking scheme's title", dealt.Marking.Title),
            }
        )
        {
            if (!IsName(text))
                yield return $"the {name} is called {Shown(text)}";
        }
        if (dealt.Cohort.Length > MostLetters)
            yield return "the class's name is too long";
        foreach (var id in Doubles(dealt.Exercises.Select(exercise => exercise.Id)))
            yield return $"there are two exercises {Shown(id)}";
        foreach (var id in Doubles(dealt.Students.Select(student => student.Who.Id)))
            yield return $"there are two students {Shown(id)}";
        if (PracticeLayout.FirstNameClash(dealt.Exercises) is { } clash)
            yield return $"two cells are named {Shown(clash)}";
        var marking = dealt.Marking;
        if (
            !new[]
            {
                marking.AccuracyShare,
                marking.FollowThroughShare,
                marking.MisconceptionShare,
                marking.UnitSlipShare,
                marking.RoundingSlipShare,
                marking.NearMissShare ?? 0,
                marking.Late?.ADay ?? 0,
                marking.Late?.AtMost ?? 0,
            }.All(share => share is >= 0 and <= 1) || marking.TeachAgainBelow is not (>= 0 and <= 1)
        )
            yield return "a share of the marking scheme is not between 0 and 1";
        if (marking.Total.BestExercises is < 1 || marking.Total.PointsAtMost is < 1)
            yield return "a limit of the marking scheme is below 1";
    }

    private static IEnumerable<string> OfExercise(Exercise exercise)
    {
        if (!Naming.IsValid(exercise.Id))
            yield return "its id is no name of an exercise";
        if (!IsName(exercise.Title) || !IsName(exercise.Skill))
            yield return "its title or skill is empty or too long";
        if (exercise.Minutes is < 1 or > 10_000)
            yield return $"it takes {exercise.Minutes} minutes";
        if (exercise.Parts.Count == 0)
            yield return "it asks nothing";
        var names = exercise
            .Givens.Select(given => given.Id)
            .Concat(exercise.Parts.Select(part => part.Id))
            .Concat(exercise.Steps.Select(step => step.Id))
            .ToList();
        foreach (var name in names.Where(name => !Naming.IsValid(name)))
            yield return $"{Shown(name)} is no name of a given or a part";
        foreach (var name in Doubles(names))
            yield return $"{Shown(name)} stands twice in it";
        foreach (
            var given in exercise.Givens.Where(given =>
                given.To < given.From
                || given.Step < 0
                || (!given.IsConstant && (given.Step == 0 || given.To - given.From > 1_000_000 * given.Step))
            )
        )
            yield return $"{Shown(given.Id)} goes from {given.From} to {given.To} in steps of {given.Step}";

        var known = exercise.Givens.Select(given => given.Id).ToHashSet(StringComparer.OrdinalIgnoreCase);
        var written = new HashSet<string>(known, StringComparer.OrdinalIgnoreCase);
        foreach (var step in exercise.Steps)
        {
            if (Unknown(step.Key, written) is { } unknown)
                yield return $"the step {Shown(step.Id)} uses {Shown(unknown)}, which is no given and no earlier step";
            written.Add(step.Id);
        }
        foreach (var part in exercise.Parts)
        {
            var formulas = part.Misconceptions.Select(one => one.Formula).Prepend(part.Key);
            if (formulas.Select(formula => Unknown(formula, known)).FirstOrDefault(name => name is not null) is { } unknown)
                yield return $"{Shown(part.Id)} uses {Shown(unknown)}, which is no given and no earlier part";
            var asWritten = part.Misconceptions.Select(one => one.Written).Prepend(part.Written).OfType<CellFormula>();
            HashSet<string> offered = [.. written, .. part.Choice?.From.Options.Select(option => option.Id) ?? []];
            if (
                asWritten
                    .Select(formula => Unknown(formula, new(offered, StringComparer.OrdinalIgnoreCase)))
                    .FirstOrDefault(name => name is not null) is
                { } strange
            )
                yield return $"{Shown(part.Id)} is written with {Shown(strange)}, which is no given, no step and no earlier part";
            if (part.Points is not (> 0 and <= 10_000))
                yield return $"{Shown(part.Id)} is worth {part.Points} points";
            if (!(part.Tolerance.Amount >= 0) || (part.Tolerance.IsRounding && part.Tolerance.Amount == 0))
                yield return $"{Shown(part.Id)} has a tolerance of {part.Tolerance.Amount}";
            foreach (var id in Doubles(part.Misconceptions.Select(one => one.Id)))
                yield return $"{Shown(part.Id)} has the misconception {Shown(id)} twice";
            foreach (var fault in WordsRules.Broken(part))
                yield return $"{Shown(part.Id)} {fault}";
            foreach (var fault in ChoiceRules.Broken(exercise, part))
                yield return $"{Shown(part.Id)} {fault}";
            known.Add(part.Id);
            written.Add(part.Id);
        }
        foreach (var constraint in exercise.Constraints)
        {
            if (Unknown(constraint, known) is { } unknown)
                yield return $"a constraint uses {Shown(unknown)}";
        }
    }

    private static string? OfSheets(PracticeLayout layout)
    {
        if (layout.Exercises.Any(exercise => exercise.Sheet.Length is 0 or > 31))
            return "a sheet has no name, or one of more than 31 characters";
        var cells = layout
            .Exercises.SelectMany(exercise =>
                exercise.Givens.Select(place => place.Address).Concat(exercise.Answers.Select(place => place.Address))
            )
            .ToList();
        return cells.Distinct().Count() == cells.Count ? null : "two cells are one";
    }

    private static IEnumerable<string> OfStudent(DealtStudent student)
    {
        if (StudentId.Fault(student.Who.Id) is { } fault)
            yield return $"the id is no student's. {StudentIdWords.Of(fault)}";
        if (!IsName(student.Who.Name))
            yield return "the name is empty or too long";
        if (student.Workbook != Dealer.WorkbookOf(student.Who))
            yield return $"the workbook is {Shown(student.Workbook)}; expected {Shown(Dealer.WorkbookOf(student.Who))}";
        if (student.ExtraTime is not (>= 0 and <= Arrangement.MostExtraTime))
            yield return $"the extra time is {student.ExtraTime} of the others' time";
        foreach (var id in student.LeavesOut.Where(id => !Naming.IsValid(id) || student.Has(id)))
            yield return $"{Shown(id)} is left out, and is dealt or no name of an exercise";
        if (student.Variants.Count == 0)
            yield return "nothing was dealt";
        foreach (
            var (part, answer) in student.Variants.SelectMany(variant =>
                variant.Exercise.Parts.Where(part => variant.Answers.ContainsKey(part.Id)).Select(part => (part, variant.Answers[part.Id]))
            )
        )
        {
            if (part.Choice is { Drawing: { } drawing, From: var from } && drawing.Seen(from, answer) is null)
                yield return $"{Shown(part.Id)} has {answer} for its answer, of which nothing is drawn";
            if (part.Choice is { } choice && choice.From.Find(answer) is null)
                yield return $"{Shown(part.Id)} has {answer} for its answer, which is no option's number";
        }
    }

    private static string? Unknown(CellFormula formula, HashSet<string> known) =>
        formula.Names.FirstOrDefault(name => !known.Contains(name));

    private static bool IsName(string text) => !string.IsNullOrWhiteSpace(text) && text.Length <= MostLetters;

    private static IEnumerable<string> Doubles(IEnumerable<string> ids) =>
        ids.GroupBy(id => id, StringComparer.OrdinalIgnoreCase).Where(same => same.Count() > 1).Select(same => same.Key);

    private static string Shown(string text) => $"“{(text.Length > 60 ? text[..60] + "…" : text)}”";
}
