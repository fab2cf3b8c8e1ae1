using ClassKit.Grading.Rehearsals;
using ClassKit.Grading.Results;

namespace ClassKit.Pages.Tests.Samples;

/// <summary>A rehearsal in which something went wrong.</summary>
internal static class SampleRehearsal
{
    public static RehearsalReport Report { get; } =
        new(
            SampleClass.Dealt,
            [
                .. SampleExercises.All.SelectMany(exercise =>
                    exercise.Parts.Select(
                        (part, index) =>
                            new RehearsedPart(exercise, part, 12, 11, 0.75, index == 1 ? null : 0.25)
                            {
                                ActedOut = 3,
                                Named = 2,
                                NamedWrongly = index,
                            }
                    )
                ),
            ],
            [new(Outcome.Misconception, Outcome.Incorrect, "s01, hydration.water: <b>12</b>", 2)],
            [
                new(
                    SampleExercises.WaterTemperature,
                    SampleExercises.WaterTemperature.Parts[0],
                    SampleExercises.WaterTemperature.Parts[0].Misconceptions[1],
                    SampleExercises.WaterTemperature.Parts[0].Misconceptions[0],
                    2,
                    12,
                    31.5
                ),
                new(
                    SampleExercises.Hydration,
                    SampleExercises.Hydration.Parts[0],
                    SampleExercises.Hydration.Parts[0].Misconceptions[0],
                    null,
                    1,
                    12,
                    512
                ),
            ],
            [.. Enumerable.Range(1, 12).Select(number => 10.0 * number)]
        );
}
