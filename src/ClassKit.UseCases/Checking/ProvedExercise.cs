using System.Globalization;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.Exercises;
using ClassKit.Content.Sources;
using ClassKit.Exercises.Draws;
using ClassKit.Exercises.Proving;
using ClassKit.Exercises.Texts;
using ClassKit.Wording.Guarantees;

namespace ClassKit.UseCases.Checking;

/// <summary>An exercise drawn on trial, with the place of what is wrong with it.</summary>
/// <param name="Path">Its file.</param>
/// <param name="Proof">What the draws show.</param>
/// <param name="Places">Where its pieces stand in the file.</param>
public sealed record ProvedExercise(string Path, ExerciseProof Proof, ExercisePlaces Places)
{
    /// <summary>Draws the exercise of a file on trial; null if the file cannot be read.</summary>
    public static ProvedExercise? Of(Source file)
    {
        ArgumentNullException.ThrowIfNull(file);
        return ExerciseReader.ReadPlaced(file).Model is var (exercise, places) ? new(file.Path, ExerciseProof.Of(exercise), places) : null;
    }

    /// <summary>Why the exercise should not be dealt, with the line at fault and an example; null if it can.</summary>
    public Diagnostic? Problem =>
        Proof.Fault is not var (worst, reached)
            ? null
            : new(
                Path,
                Places.LineOf(worst.First.Culprit),
                $"{(Proof.Profile.Kept == 0 ? "No variant can be dealt" : $"Only {Proof.Profile.Kept} of {Proof.Profile.Draws} draws can be dealt")}: {Reason(worst, reached)}",
                BreachWords.WhatToDo(worst.First)
            );

    /// <summary>
    /// What the author should know of an exercise that can be dealt; null if nothing. Where answers are the same for all, sharing numbers
    /// gives nothing away.
    /// </summary>
    public Diagnostic? Note =>
        Problem is not null || !Proof.IsNarrow || Proof.Exercise.HasOneAnswer()
            ? null
            : new(
                Path,
                null,
                $"There are only {Proof.Space.Count} variants, so that students of a class of {ExerciseProof.UsualClass} will share them",
                "Widen a given's range, or make its steps smaller."
            )
            {
                Weight = Weight.Noted,
            };

    private string Reason(Rejection rejection, int reached) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"{BreachWords.Because(rejection.First)}, in {rejection.Count} of {reached} draws. For example with {Drawn(rejection)}{(BreachWords.Seen(rejection.First) is { Length: > 0 } seen ? ": " + seen : "")}"
        );

    private string Drawn(Rejection rejection) =>
        string.Join(
            ", ",
            Proof
                .Exercise.Givens.Where(given => !given.IsConstant)
                .Select(given => $"{given.Id} {GivenText.Of(given, rejection.Givens[given.Id])}")
        );
}
