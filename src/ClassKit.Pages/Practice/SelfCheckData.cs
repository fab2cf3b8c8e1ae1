using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Unicode;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Dealing;
using ClassKit.Exercises.SelfChecking;
using ClassKit.Grading.Answers;

namespace ClassKit.Pages.Practice;

/// <summary>
/// What the script of a self-checking page has to know: how numbers are typed, what units make of them, and what they mean.
/// </summary>
internal static class SelfCheckData
{
    private static readonly JsonSerializerOptions Style = new(JsonSerializerDefaults.Web)
    {
        // Less-than signs and ampersands stay escaped, so that no text can end the element.
        Encoder = JavaScriptEncoder.Create(UnicodeRanges.All),
    };

    /// <summary>What elements of a part are called on the page.</summary>
    public static string IdOf(Exercise exercise, Part part) => $"{exercise.Id}-{part.Id}";

    /// <summary>The element that holds the data; browsers do not run it.</summary>
    public static string Element(IReadOnlyList<NumberedExercise> exercises, DealtStudent dealt)
    {
        var parts = exercises.SelectMany(exercise => Parts(exercise, dealt)).ToDictionary(part => part.Id, part => part.Entry);
        var units = parts
            .Values.Select(part => part.Unit)
            .Distinct()
            .ToDictionary(
                unit => unit,
                unit => WrittenUnits.Known(unit).ToDictionary(known => known.Written, known => (double[])[known.Factor, known.Offset])
            );
        return $"<script type=\"application/json\" id=\"self-check-data\">{JsonSerializer.Serialize(new { AnswerText.Pattern, TypedText.Folds, TypedText.Zeros, TypedText.Longest, Units = units, Parts = parts }, Style)}</script>";
    }

    private static IEnumerable<(string Id, PartEntry Entry)> Parts(NumberedExercise numbered, DealtStudent dealt)
    {
        var exercise = numbered.Exercise;
        var variant = dealt.Of(exercise.Id);
        return exercise
            .Parts.Where(part => part.InWords is null)
            .Select(part =>
                (
                    IdOf(exercise, part),
                    new PartEntry(
                        part.Unit.Sign,
                        part.Unit.IsPercent,
                        part.Unit.IsMoney,
                        part.Choice is not null,
                        [.. AnswerMeaning.Of(variant, part).Select(meaning => Entry(numbered, meaning))]
                    )
                )
            );
    }

    private static MeaningEntry Entry(NumberedExercise numbered, AnswerMeaning meaning) =>
        new(
            meaning.Low,
            meaning.High,
            meaning.Kind == MeaningKind.Right,
            meaning.Kind switch
            {
                MeaningKind.Right => "",
                MeaningKind.CarriedOn =>
                    $"The method is right, but it carries on from a slip in {LabelOf(numbered, meaning.SlipIn!)}: put that right first. {meaning.Misconception!.Words}",
                MeaningKind.Misconception => meaning.Misconception!.Words,
            }
        );

    private static string LabelOf(NumberedExercise numbered, Part part) =>
        numbered.LabelOf(numbered.Exercise.Parts.Index().First(entry => entry.Item == part).Index);

    private sealed record PartEntry(string Unit, bool Percent, bool Money, bool Choice, IReadOnlyList<MeaningEntry> Meanings);

    private sealed record MeaningEntry(double Low, double High, bool Right, string Words);
}
