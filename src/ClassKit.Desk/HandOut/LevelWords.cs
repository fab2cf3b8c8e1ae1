using ClassKit.Exercises.Authoring;

namespace ClassKit.Desk.HandOut;

/// <summary>What a level of exercises is called.</summary>
internal static class LevelWords
{
    public static string Of(ExerciseLevel level) =>
        level switch
        {
            ExerciseLevel.Guided => "guided",
            ExerciseLevel.Standard => "standard",
            ExerciseLevel.Open => "open",
        };
}
