using System.Globalization;
using ClassKit.Content.Diagnostics;
using ClassKit.Desk.Folders;
using ClassKit.Desk.Marks;
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
    ["exercise", "skill", "level", "minutes", "points", "spread", "one-sheet", "title", "due", "zone", Late, "seed"];

    /// <summary>The tick that says that work which is late from the beginning is meant.</summary>
    public const string Late = "late";

    /// <summary>As long as a heading may be.</summary>
    private const int LongestTitle = 120;

    /// <summary>The wish, and everything that is wrong with it.</summary>
    /// <param name="visit">The request.</param>
    /// <param name="known">The class: its clocks say when something is due.</param>
    /// <param name="isBank">True where nothing but what is asked for makes a set of the exercises.</param>
    /// <param name="problems">What is wrong.</param>
    public static DealWish Read(Visit visit, ClassEntry known, bool isBank, out IReadOnlyList<Diagnostic> problems)
    {
        ArgumentNullException.ThrowIfNull(known);
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
        var zone = known.Profile.Model?.TimeZone ?? ClassTimeZone.Find(visit.Typed("zone"));
        if (due?.In(zone) is { } moment && moment.At < visit.Desk.Now && !visit.Ticked(Late))
            wrong.Add(
                new(
                    Late,
                    null,
                    $"It would be due on {moment.Words}, and that is over",
                    "Whatever comes back would be late. Choose another day and time, or tick beside it that this is meant."
                )
            );
        if (isBank && set.IsNone)
            wrong.Add(
                new(
                    "exercise",
                    null,
                    "Nothing is ticked, and everybody would get every exercise of the practice bank",
                    "Tick some, or say how many minutes it may take, or how many points it is out of."
                )
            );
        var title = isBank ? OneLine.Of(visit.Typed("title")) : "";
        if (title.Length > LongestTitle)
            wrong.Add(new("title", null, "What students read at the top is very long", $"Take at most {LongestTitle} letters."));
        problems = wrong;
        return new(set, visit.Ticked("spread"), seed)
        {
            OneSheet = visit.Ticked("one-sheet"),
            Due = due,
            Title = title.Length > 0 ? title : null,
        };

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
