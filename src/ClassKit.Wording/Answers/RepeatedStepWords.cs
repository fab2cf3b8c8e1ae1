using ClassKit.Exercises.Authoring;
using ClassKit.Grading.Results;
using ClassKit.Wording.Counts;
using ClassKit.Wording.Numbers;

namespace ClassKit.Wording.Answers;

/// <summary>What a student is told who put one step of an order into several places.</summary>
public static class RepeatedStepWords
{
    /// <summary>A sentence; null where the step stands once, is right here, or is no step of an order.</summary>
    /// <param name="answer">One answer.</param>
    /// <param name="ofExercise">All answers of its exercise.</param>
    public static string? Of(AnswerGrade answer, IReadOnlyList<AnswerGrade> ofExercise)
    {
        ArgumentNullException.ThrowIfNull(answer);
        ArgumentNullException.ThrowIfNull(ofExercise);
        if (answer is not { Part.Choice.From: { Kind: ChoiceKind.Order } list, Chosen: { } chosen, Outcome: not Outcome.ValueOnly })
            return null;
        var others = ofExercise
            .Where(other => other.Part.Id != answer.Part.Id && other.Part.Choice?.From.Id == list.Id && other.Chosen?.Id == chosen.Id)
            .Select(other => Phrases.Letter(answer.Exercise.Parts.Index().First(entry => entry.Item.Id == other.Part.Id).Index))
            .ToList();
        return others.Count == 0
            ? null
            : $"You put the same step in {Counted.Noun(others.Count, "part")} {Phrases.List(others)} too; every step has one place.";
    }
}
