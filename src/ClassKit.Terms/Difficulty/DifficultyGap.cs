namespace ClassKit.Terms.Difficulty;

/// <summary>Why a part has no difficulty yet.</summary>
public enum DifficultyGap
{
    /// <summary>Everybody got it: it is easier than a number can say.</summary>
    AllGot,

    /// <summary>Nobody got it.</summary>
    NobodyGot,

    /// <summary>Nothing links it with other parts: whoever got it got all others too, or missed all others.</summary>
    NotLinked,
}
