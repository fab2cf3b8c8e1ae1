using System.Globalization;
using ClassKit.Exercises;
using ClassKit.Lessons;
using ClassKit.Pages;
using ClassKit.Workbooks;

namespace ClassKit.UseCases;

/// <summary>Deals a class its practice workbooks: one a student, the same on a sheet to print, the answer key, and dealt.json for grading.</summary>
public static class DealPractice
{
    /// <summary>The command, and the kind of its output folder.</summary>
    public const string Kind = "deal";

    /// <summary>The seed when none is named.</summary>
    public const ulong DefaultSeed = 1;

    /// <summary>Reads a lesson, or a folder of exercises, and a roster, and makes everything that dealing makes.</summary>
    /// <param name="folder">The lesson's folder, or one of exercises.</param>
    /// <param name="rosterFile">The students.</param>
    /// <param name="classFile">The class profile, for the class's name and time zone; null for none.</param>
    /// <param name="wish">What is wanted; <see cref="SetWish.None"/> for all of the lesson's own exercises.</param>
    /// <param name="into">The output folder: a deal that it holds is added to and never replaced. Null for a new one.</param>
    public static Produced Make(string folder, string rosterFile, string? classFile, DealWish wish, string? into = null)
    {
        ArgumentNullException.ThrowIfNull(wish);
        var before = EarlierDeal.In(into);
        if (!before.Succeeded) return Produced.Nothing(before.Problems);
        var roster = ClassList.Read(rosterFile, classFile);
        var set = PracticeSet.Read(folder, wish.Set, wish.Seed);
        return set.Succeeded && roster.Succeeded ? Make(set.Model, roster.Model, wish, folder, before.Model).Produced : Produced.Nothing([.. set.Problems, .. roster.Problems]);
    }

    /// <summary>Deals a lesson that is at hand, the same to everyone.</summary>
    internal static (Produced Produced, DealtClass? Dealt) Make(Lesson lesson, Roster roster, ulong seed, string lessonFolder) =>
        Make(PracticeSet.Of(lesson), roster, new(SetWish.None, false, seed), lessonFolder);

    /// <summary>Deals a set that is at hand.</summary>
    internal static (Produced Produced, DealtClass? Dealt) Make(PracticeSet set, Roster roster, DealWish wish, string folder, EarlierDeal? earlier = null)
    {
        var before = earlier?.Dealt;
        var canExtend = before is not null && before.Exercises.All(dealt => set.Pool.Any(exercise => exercise.Id == dealt.Id));
        var spread = !wish.IsSpread ? null
            : canExtend ? SpreadChooser.Extend(before!, set.Pool, roster.Students)
            : SpreadChooser.Choose(set.Pool, wish.Set, roster.Students, wish.Seed);
        var exercises = spread?.Exercises ?? set.Exercises;
        if (PracticeLayout.FirstNameClash(exercises) is { } clash) return (Produced.Nothing(PracticeSet.Clash(folder, clash)), null);
        var settings = DealSettings.Usual with { Purpose = wish.Purpose, Choice = wish.Choice, Sets = spread?.Sets, Before = before };
        var planned = new DealtClass(set.Id, set.Title, roster.Cohort, wish.Seed, set.Marking, exercises, [])
        {
            Identity = DealIdentity.Of(set.Id, set.Title, roster.Cohort, wish.Seed, settings, exercises),
            Purpose = wish.Purpose,
        };
        if (earlier?.Refusal(planned, roster) is { } refusal) return (Produced.Nothing(refusal), null);
        var result = Dealer.Deal(set.Id, set.Title, exercises, set.Marking, before is null ? roster : roster with { TimeZone = roster.TimeZone ?? before.TimeZone }, wish.Seed, settings);
        if (result.Class is not { } dealt)
            return (Produced.Nothing(PracticeSet.Undealt(folder, result)), null);
        return (new(
            earlier?.Keep(FilesOf(dealt)) ?? FilesOf(dealt),
            [
                .. earlier?.Notes(dealt) ?? [],
                .. spread is not null ? [Summary(spread)] : wish.Set.IsNone ? (IEnumerable<string>)[] : [set.Summary],
                $"{dealt.Students.Count} workbooks of {dealt.ExercisesOf(dealt.Students[0]).Count} exercises, seed {wish.Seed}. Hand out only what is in workbooks, or in sheets for work on paper; keep {DealtJson.FileName} and the key to yourself.",
                .. result.Notes,
                .. Idle(dealt),
            ], []), dealt);
    }

    /// <summary>Where a student's sheet goes.</summary>
    internal static string SheetOf(DealtStudent student) => $"sheets/{student.Student.Id}.html";

    /// <summary>The files of a dealt folder.</summary>
    internal static IReadOnlyList<OutputFile> FilesOf(DealtClass dealt)
    {
        var writer = new DealtWorkbookWriter(dealt);
        return
        [
            .. dealt.Students.Select(student => new OutputFile(student.Workbook, stream => stream.Write(writer.Write(student)))),
            .. dealt.Students.Select(student => OutputFile.OfText(SheetOf(student), () => HtmlPages.Sheet(dealt, student))),
            OutputFile.OfPieces("answer-key.html", () => HtmlPages.AnswerKey(dealt)),
            new OutputFile(DealtJson.FileName, stream => DealtJson.Write(stream, dealt)),
        ];
    }

    /// <summary>What the marking scheme's rule for totals has nothing to do.</summary>
    private static IEnumerable<string> Idle(DealtClass dealt)
    {
        var exercises = dealt.ExercisesOf(dealt.Students[0]);
        if (dealt.Marking.Total.BestExercises is { } best && best >= exercises.Count)
            yield return $"The marking scheme counts the {best} best exercises, and a student has {exercises.Count}: all of them count.";
        if (dealt.Marking.Total.PointsAtMost is { } most && exercises.Sum(SetChooser.PointsOf) is var points && points <= most)
            yield return string.Create(CultureInfo.InvariantCulture, $"The marking scheme counts at most {most} points, and a student can earn {points:0.##}: all of them count.");
    }

    private static string Summary(Spread spread)
    {
        var minutes = spread.LeastMinutes == spread.MostMinutes ? $"{spread.LeastMinutes}" : $"{spread.LeastMinutes} to {spread.MostMinutes}";
        var weight = string.Create(CultureInfo.InvariantCulture, $"each {spread.Points:0.##} points, about {minutes} minutes, and as many exercises of each skill and level");
        return spread.Different == 1
            ? $"No second set of equal weight was found, so that everyone gets the same: {weight}. Ask for fewer minutes or points, so that there is something to choose from."
            : $"{spread.Different} different sets of {spread.Exercises.Count} exercises: {weight}.";
    }
}
