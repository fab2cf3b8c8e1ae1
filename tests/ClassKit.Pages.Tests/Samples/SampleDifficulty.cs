using ClassKit.Terms.Difficulty;

namespace ClassKit.Pages.Tests.Samples;

/// <summary>Two exercises: of one much is known, of the other nothing.</summary>
internal static class SampleDifficulty
{
    private const string Class = "Invented class";
    private const int Students = 24;

    private static readonly PastDifficulty Past = PastDifficulty.Of([
        .. Enumerable
            .Range(0, 40)
            .Select(student => new PastWork(
                Class,
                "K7M-4RX9",
                [
                    .. SampleExercises.Hydration.Parts.Select(
                        (part, at) =>
                            new PastAnswer(
                                new(SampleExercises.Hydration.Id, part.Id),
                                (student + at) % (at + 2) == 0 ? 0 : part.Points,
                                part.Points,
                                student % 5 == 0 && part.Misconceptions is [var first, ..] ? first.Id : null,
                                student % 7 == 1 ? $"=2*{part.Id}" : null
                            )
                    ),
                    new(new("elsewhere", "other"), student % 3 == 0 ? 0 : 1, 1, null),
                ]
            )),
    ]);

    public static SetDifficulty Known { get; } =
        new(
            "Practice: <hydration>",
            Class,
            Students,
            Past,
            [
                ExerciseDifficulty.Of(SampleExercises.Hydration, Past, Class, Students),
                ExerciseDifficulty.Of(SampleExercises.Scaling, Past, Class, Students),
            ]
        );
}
