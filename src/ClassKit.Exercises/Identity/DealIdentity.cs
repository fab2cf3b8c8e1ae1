using System.Diagnostics.CodeAnalysis;
using ClassKit.Exercises.Authoring;

namespace ClassKit.Exercises.Identity;

/// <summary>Which deal something is from: the same for everything of one deal, and another for every other.</summary>
/// <remarks>It says nothing of who was dealt to, so that students can be added to a deal.</remarks>
public sealed record DealIdentity
{
    private DealIdentity(string digest) => (Digest, Code) = (digest, DealCode.Of(Convert.FromHexString(digest)));

    /// <summary>The SHA-256 of what was dealt, 64 lower-case hexadecimal digits.</summary>
    public string Digest { get; }

    /// <summary>Its short form; see <see cref="DealCode"/>.</summary>
    public string Code { get; }

    /// <summary>The identity of what was dealt.</summary>
    /// <param name="lesson">The lesson's id.</param>
    /// <param name="title">Its title.</param>
    /// <param name="cohort">What the class is called.</param>
    /// <param name="seed">What the draws were made from.</param>
    /// <param name="purpose">What it is for.</param>
    /// <param name="choice">How sets were chosen; empty where everyone gets the same.</param>
    /// <param name="exercises">In workbook order.</param>
    public static DealIdentity Of(
        string lesson,
        string title,
        string cohort,
        ulong seed,
        DealPurpose purpose,
        string choice,
        IReadOnlyList<Exercise> exercises
    )
    {
        ArgumentNullException.ThrowIfNull(exercises);
        var digest = new DealDigest();
        digest.Add(lesson, title, cohort, seed, purpose, choice, exercises.Count);
        foreach (var exercise in exercises)
            digest.Add(exercise);
        return new(digest.Finish());
    }

    /// <summary>The identity with a digest that was written down; null for a text that is none.</summary>
    public static DealIdentity? Read(string digest) => IsDigest(digest) ? new(digest) : null;

    private static bool IsDigest([NotNullWhen(true)] string? text) => text is { Length: 64 } && text.All(char.IsAsciiHexDigitLower);
}
