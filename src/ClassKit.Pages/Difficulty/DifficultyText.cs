using ClassKit.Terms.Difficulty;

namespace ClassKit.Pages.Difficulty;

/// <summary>How hard something proved, in words.</summary>
public static class DifficultyText
{
    /// <summary>A band in points: “11 to 14 of 16 points”.</summary>
    public static string Band(PointsBand band) =>
        $"{NumberText.AtMost(band.Low, 1)} to {NumberText.AtMost(band.High, 1)} of {Phrases.Count((decimal)band.OutOf, "point")}";

    /// <summary>How many earned more than half: “58 % of 24”.</summary>
    public static string Got(PartDifficulty part) => $"{NumberText.Share((double)part.Got / part.Answers)} of {part.Answers}";

    /// <summary>The difficulty with its error, or why there is none.</summary>
    public static string Hard(PartDifficulty part) =>
        part switch
        {
            { Difficulty: { } difficulty, Error: { } error } =>
                $"{(difficulty > 0 ? "+" : "")}{NumberText.Fixed(difficulty, 1)}\u00A0±\u00A0{NumberText.Fixed(error, 1)}",
            { Gap: DifficultyGap.AllGot } => "everybody got it",
            { Gap: DifficultyGap.NobodyGot } => "nobody got it",
            _ => "cannot be compared yet",
        };

    /// <summary>Whether that is enough, and what is still wanted.</summary>
    public static string Enough(PartDifficulty part) =>
        part switch
        {
            { IsEnough: true } => "yes",
            { StillWanted: { } wanted } => $"not yet: about {Phrases.Count(wanted, "answer")} more",
            _ => "not yet",
        };

    /// <summary>How those who got it did in everything else.</summary>
    public static string Sorts(PartDifficulty part) => part.Discrimination is { } correlation ? NumberText.Fixed(correlation, 2) : "–";
}
