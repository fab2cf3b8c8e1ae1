using System.Globalization;
using ClassKit.Content.Diagnostics;
using ClassKit.Desk.Folders;
using ClassKit.Desk.Serving;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Choosing;
using ClassKit.Exercises.Deadlines;
using ClassKit.UseCases.Dealing;
using ClassKit.UseCases.Touring;

namespace ClassKit.Desk.HandOut;

/// <summary>What was asked of a set, as typed into a form.</summary>
internal static class SetForm
{
    /// <summary>
    /// The seed that is offered: another one each round, those counted too that were taken away, and that of the invented class's workbooks
    /// where somebody looks round.
    /// </summary>
    public static ulong UsualSeed(TeachingFolder folder, ClassEntry known) =>
        folder.IsLookRound ? DemoMaterial.Seed : DealPractice.DefaultSeed + (ulong)(folder.NextNumber(known) - 1);

    /// <summary>What the form asks for.</summary>
    public static IReadOnlyList<string> Fields { get; } =
    ["exercise", "skill", "level", "minutes", "points", "spread", "one-sheet", "due", "zone", "seed"];

    /// <summary>The wish, and everything that is wrong with it.</summary>
    public static DealWish Read(Visit visit, out IReadOnlyList<Diagnostic> problems)
    {
        List<Diagnostic> wrong = [];
        var levels = visit
            .All("level")
            .Where(text => !char.IsAsciiDigit(text.FirstOrDefault('0')))
            .Select(text => Enum.TryParse<ExerciseLevel>(text, out var level) ? level : (ExerciseLevel?)null)
            .OfType<ExerciseLevel>()
            .ToList();
        var set = new SetWish(visit.All("exercise"), visit.All("skill"), levels, Amount("minutes", "minutes"), Amount("points", "points"));
        if (!ulong.TryParse(visit.Typed("seed"), NumberStyles.None, CultureInfo.InvariantCulture, out var seed))
            wrong.Add(
                new(
                    "seed",
                    null,
                    $"The number for what stands in the exercises is `{visit.Typed("seed")}`",
                    $"Type a whole number from 0 to {ulong.MaxValue}."
                )
            );
        var due = visit.Typed("due") is { Length: > 0 } typed ? DueWish.Parse(typed) : null;
        if (due is null && visit.Typed("due").Length > 0)
            wrong.Add(new("due", null, $"The day and time are `{visit.Typed("due")}`", "Type them as 2026-11-20T17:00."));
        problems = wrong;
        return new(set, visit.Ticked("spread"), seed) { OneSheet = visit.Ticked("one-sheet"), Due = due };

        int? Amount(string name, string what)
        {
            var text = visit.Typed(name);
            if (text.Length == 0)
                return null;
            if (int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var amount) && amount is > 0 and <= 10_000)
                return amount;
            wrong.Add(new(name, null, $"The {what} are `{text}`", "Type a whole number from 1 to 10000, or nothing."));
            return null;
        }
    }
}
