using System.Globalization;
using ClassKit.Exercises.Authoring;

namespace ClassKit.ItemBanks.Items;

/// <summary>
/// The names of an item's variables. Ids of exercises are identifiers in the standard as they are; a prefix keeps the kinds apart.
/// </summary>
internal static class Identifiers
{
    public const string Score = "SCORE";
    public const string MostScore = "MAXSCORE";
    public const string Right = "right";

    public static string Given(Given given) => "G_" + given.Id;

    /// <summary>A given as it is shown, if that differs from what keys compute with.</summary>
    public static string Shown(Given given) => AnswerScale.Of(given) == 1 ? Given(given) : "S_" + given.Id;

    public static string Option(ChoiceOption option) => "O_" + option.Id;

    public static string Answer(Part part) => "A_" + part.Id;

    public static string Response(Part part) => "R_" + part.Id;

    public static string Feedback(Part part) => "FEEDBACK_" + part.Id;

    /// <summary>The points that people give for an answer in words.</summary>
    public static string ByPeople(Part part) => "POINTS_" + part.Id;

    public static string Wrong(Part part, Misconception misconception) => $"M_{part.Id}_{misconception.Id}";

    public static string Item(Exercise exercise, int variant) =>
        string.Create(CultureInfo.InvariantCulture, $"{exercise.Id}_{variant:000}");
}
