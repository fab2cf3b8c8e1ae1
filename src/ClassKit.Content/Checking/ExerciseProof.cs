using System.Globalization;
using ClassKit.Exercises;

namespace ClassKit.Content;

/// <summary>What a few hundred draws show of an exercise before a student sees it.</summary>
/// <param name="Path">Its file.</param>
/// <param name="Exercise">The exercise.</param>
/// <param name="Profile">How its draws fare.</param>
/// <param name="Space">How many variants it has.</param>
/// <param name="Band">Between what the effort of its variants lies.</param>
public sealed record ExerciseProof(string Path, Exercise Exercise, RejectionProfile Profile, VariantSpace Space, EffortBand Band)
{
    /// <summary>
    /// Of a hundred draws at least fifteen must be fit to deal: then a hundred failures in a row happen to one class of thirty in
    /// a hundred thousand, and nobody waits for a deal.
    /// </summary>
    public const double LeastKept = 0.15;

    /// <summary>A class of usual size; an exercise with fewer variants makes its students share.</summary>
    public const int UsualClass = 30;

    private const int Draws = 1000;

    /// <summary>Draws on trial.</summary>
    public static ExerciseProof Of(string path, Exercise exercise)
    {
        var generator = VariantGenerator.For(exercise);
        return new(path, exercise, RejectionProfile.Of(generator, Draws), VariantSpace.Of(generator), generator.Band!);
    }

    /// <summary>Why the exercise should not be dealt, with the line at fault and an example; null if it can.</summary>
    public Diagnostic? Problem => Profile.KeptShare >= LeastKept || Profile.Worst is not var (worst, reached) ? null : new(
        Path,
        ExercisePlaces.Of(Path).LineOf(worst.First.Culprit),
        $"{(Profile.Kept == 0 ? "No variant can be dealt" : $"Only {Profile.Kept} of {Profile.Draws} draws can be dealt")}: {Reason(worst, reached)}",
        worst.First.WhatToDo);

    /// <summary>What the author should know of an exercise that can be dealt; null if nothing.</summary>
    public Diagnostic? Note => Problem is not null || Space.Count >= UsualClass ? null : new(
        Path, null, $"There are only {Space.Count} variants, so that students of a class of {UsualClass} will share them",
        "Widen a given's range, or make its steps smaller.");

    private string Reason(Rejection rejection, int reached) => string.Create(
        CultureInfo.InvariantCulture,
        $"{rejection.First.Because}, in {rejection.Count} of {reached} draws. For example with {Drawn(rejection)}{(rejection.First.Seen.Length > 0 ? ": " + rejection.First.Seen : "")}");

    private string Drawn(Rejection rejection) => string.Join(
        ", ", Exercise.Givens.Where(given => !given.IsConstant).Select(given => $"{given.Id} {GivenText.Of(given, rejection.Givens[given.Id])}"));
}
