using ClassKit.Content;
using ClassKit.Exercises;
using ClassKit.Pages;

namespace ClassKit.UseCases;

/// <summary>Makes pages for practice that check themselves: one for anyone, or one a student.</summary>
public static class MakePractice
{
    /// <summary>The command, and the kind of its output folder.</summary>
    public const string Kind = "practice";

    /// <summary>Somebody who wants to practise.</summary>
    private static readonly Roster Anyone = new("", [new("practice", "")]);

    /// <summary>Reads a lesson, or a folder of exercises, and makes the pages.</summary>
    /// <param name="folder">The lesson's folder, or one of exercises.</param>
    /// <param name="rosterFile">The students; null for one page that is anyone's.</param>
    /// <param name="apartFrom">A folder that `classkit deal` made, of whose numbers none may come; null if none was dealt yet.</param>
    /// <param name="wish">Which exercises are wanted; <see cref="SetWish.None"/> for all.</param>
    /// <param name="seed">Decides every draw. The same seed as a deal's still gives other numbers.</param>
    public static Produced Make(string folder, string? rosterFile, string? apartFrom, SetWish wish, ulong seed)
    {
        ArgumentNullException.ThrowIfNull(wish);
        var set = PracticeSet.Read(folder, wish, seed);
        var roster = rosterFile is null ? new(Anyone, []) : RosterReader.Read(rosterFile);
        var before = apartFrom is null ? null : DealtFolder.Read(apartFrom);
        if (!set.Succeeded || !roster.Succeeded || before is { Succeeded: false })
            return Produced.Nothing([.. set.Problems, .. roster.Problems, .. before?.Problems ?? []]);

        return Make(set.Model, rosterFile is null ? null : roster.Model, before is null ? NumbersToAvoid.None : NumbersToAvoid.OfAnyone(before.Model!), seed, folder);
    }

    /// <summary>Makes the pages of a set that is at hand; without a roster, one page for anyone.</summary>
    internal static Produced Make(PracticeSet set, Roster? roster, NumbersToAvoid avoid, ulong seed, string folder)
    {
        var result = Dealer.Deal(set.Id, set.Title, set.Exercises, set.Marking, roster ?? Anyone, seed, new(DealPurpose.Practice, avoid));
        if (result.Class is not { } dealt)
            return Produced.Nothing(PracticeSet.Undealt(folder, result));
        return new(
            [.. dealt.Students.Select(student => OutputFile.OfText(roster is null ? "practice.html" : $"pages/{student.Student.Id}.html", () => HtmlPages.SelfCheck(dealt, student)))],
            [
                set.Summary,
                $"{(roster is null ? "One page" : $"{dealt.Students.Count} pages")} to practise with, seed {seed}. The answers are in the page: it is for practice, not for work that is handed in.",
                .. result.Notes,
            ], []);
    }
}
