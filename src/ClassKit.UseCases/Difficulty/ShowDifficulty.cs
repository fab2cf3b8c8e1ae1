using System.Globalization;
using ClassKit.Content.Classes;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.Sources;
using ClassKit.Exercises.Choosing;
using ClassKit.Pages;
using ClassKit.Terms.Difficulty;
using ClassKit.UseCases.Dealing;
using ClassKit.UseCases.Output;
using ClassKit.UseCases.Running;

namespace ClassKit.UseCases.Difficulty;

/// <summary>Shows how hard exercises proved in earlier classes, and what a class can be expected to earn with them.</summary>
public static class ShowDifficulty
{
    /// <summary>The kind of folder that its files go into.</summary>
    public const string Kind = "difficulty";

    /// <summary>How many students a class has where no profile says so; common practice, no source.</summary>
    private const int UsualStudents = 24;

    private const string Page = "difficulty.html";

    /// <summary>The request for paths, or everything that is wrong with them.</summary>
    /// <param name="folder">The lesson's folder, or one of exercises.</param>
    /// <param name="wish">Which of its exercises; all if nothing is asked.</param>
    /// <param name="past">Where the answers of earlier classes lie.</param>
    /// <param name="classFile">The class profile; null for none.</param>
    public static Reading<DifficultyRequest> Read(string folder, SetWish wish, PastPaths past, string? classFile)
    {
        ArgumentNullException.ThrowIfNull(past);
        if (past.IsNone)
            return new(
                null,
                [new(folder, null, "Nothing says where earlier answers are", "Name the record, or folders that grading made.")]
            );
        var library = Library.OfPaths();
        var set = PracticeSet.Read(library.At(folder), wish, DealPractice.DefaultSeed);
        var known = past.Read();
        var profile = classFile is null ? null : ClassProfileReader.Read(library.At(classFile));
        List<Diagnostic> problems = [.. set.Problems, .. known.Problems, .. profile?.Problems ?? []];
        return problems.Count > 0
            ? new(null, problems)
            : new(
                new(set.Model!, known.Model!, profile?.Model?.Name ?? "", profile?.Model?.Students ?? UsualStudents)
                {
                    Paper = profile?.Model?.Paper,
                },
                []
            );
    }

    /// <summary>Works it out.</summary>
    /// <exception cref="OperationCanceledException">The run was stopped.</exception>
    public static SetDifficulty Run(DifficultyRequest request, Run run)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(run);
        return new(
            request.Set.Title,
            request.Class,
            request.Students,
            request.Past,
            [
                .. run.Each(RunStep.Weighing, request.Set.Exercises)
                    .Select(exercise => ExerciseDifficulty.Of(exercise, request.Past, request.Class, request.Students)),
            ]
        )
        {
            Paper = request.Paper,
        };
    }

    /// <summary>The files, each made when it is written.</summary>
    public static Produced Write(SetDifficulty difficulty)
    {
        ArgumentNullException.ThrowIfNull(difficulty);
        return new(
            [OutputFile.OfText(Page, () => HtmlPages.Difficulty(difficulty)), OutputFile.OfText("difficulty.csv", () => Table(difficulty))],
            [],
            []
        )
        {
            Open = [Page],
        };
    }

    private static string Table(SetDifficulty difficulty) =>
        CsvText.Plain([
            [
                "exercise",
                "part",
                "points",
                "answers",
                "got",
                "difficulty in logits",
                "standard error",
                "scale",
                "known well enough",
                "answers still wanted",
                "discrimination",
                "wrong turns",
                "near misses",
            ],
            .. difficulty.Exercises.SelectMany(exercise =>
                exercise.Parts.Select(part => Row(exercise, part.Part.Id, CsvText.Points(part.Part.Points), part.Proved))
            ),
        ]);

    private static string[] Row(ExerciseDifficulty exercise, string part, string points, PartDifficulty? proved) =>
        proved is null
            ? [exercise.Exercise.Id, part, points, "0", "0", "", "", "", "no", "", "", "", ""]
            :
            [
                exercise.Exercise.Id,
                part,
                points,
                Whole(proved.Answers),
                Whole(proved.Got),
                Number(proved.Difficulty),
                Number(proved.Error),
                proved.Scale is { } scale ? Whole(scale + 1) : "",
                proved.IsEnough ? "yes" : "no",
                proved.StillWanted is { } wanted ? Whole(wanted) : "",
                Number(proved.Discrimination),
                Met(proved.WrongTurns),
                Met(proved.NearMisses.Select(miss => (miss.Formula[1..], miss.Times))),
            ];

    private static string Met(IEnumerable<(string What, int Times)> met) =>
        string.Join("; ", met.Select(one => $"{one.What} {Whole(one.Times)}"));

    private static string Whole(int number) => number.ToString(CultureInfo.InvariantCulture);

    private static string Number(double? number) => number?.ToString("0.###", CultureInfo.InvariantCulture) ?? "";
}
