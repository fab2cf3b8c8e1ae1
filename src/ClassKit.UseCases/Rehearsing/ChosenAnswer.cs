using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Keys;
using ClassKit.Exercises.Lettering;
using ClassKit.Grading.Results;

namespace ClassKit.UseCases.Rehearsing;

/// <summary>An answer made up for a part that is answered by choosing, and what a grader ought to say of it.</summary>
/// <param name="Content">What stands in the cell; null for nothing.</param>
/// <param name="Truth">The outcome that is right.</param>
/// <param name="Misconception">The misconception acted out, or null.</param>
internal sealed record ChosenAnswer(string? Content, Outcome Truth, string? Misconception = null)
{
    /// <summary>Makes one.</summary>
    /// <param name="exercise">The exercise.</param>
    /// <param name="part">A part that is answered by choosing.</param>
    /// <param name="way">How; a way that does not fit here falls back to the right letter.</param>
    /// <param name="pick">Which of several misconceptions is meant; any number.</param>
    /// <param name="givens">What was dealt.</param>
    /// <param name="right">The key's answers.</param>
    /// <param name="own">The student's own numbers so far.</param>
    /// <param name="carriesOn">True if the key builds on an own answer that is wrong or missing.</param>
    public static ChosenAnswer Of(
        Exercise exercise,
        Part part,
        AnswerWay way,
        int pick,
        IReadOnlyDictionary<string, decimal> givens,
        IReadOnlyDictionary<string, double> right,
        IReadOnlyDictionary<string, double> own,
        bool carriesOn
    )
    {
        var options = LetteredOptions.Of(exercise, part.Choice!.From, givens);
        var key = right[part.Id];
        if (
            carriesOn
            && KeyValues.Number(part.Key, KeyValues.Names(givens, own)) is { } carried
            && carried != key
            && way is not (AnswerWay.Blank or AnswerWay.Words or AnswerWay.DivisionByZero)
        )
            return new(options.LetterOf(carried), Outcome.FollowThrough);
        return way switch
        {
            AnswerWay.Blank => new(null, Outcome.Blank),
            AnswerWay.Words => new("see my notes", Outcome.Unreadable),
            AnswerWay.DivisionByZero => new("=1/0", Outcome.Incorrect),
            AnswerWay.WrongTurn or AnswerWay.WrongTurnTyped when !carriesOn && Wrong(part, pick, givens, right) is var (number, id) => new(
                options.LetterOf(number),
                Outcome.Misconception,
                id
            ),
            AnswerWay.Slip when !carriesOn && Unnamed(part, givens, right) is { } slip => new(options.LetterOf(slip), Outcome.Incorrect),
            AnswerWay.Typed => new(options.LetterOf(key).ToLowerInvariant() + ")", Outcome.ValueOnly),
            AnswerWay.OneGo => new(part.Choice.From.Find(key)!.Words, Outcome.ValueOnly),
            _ => new(options.LetterOf(key), Outcome.ValueOnly),
        };
    }

    private static (double Number, string Id)? Wrong(
        Part part,
        int pick,
        IReadOnlyDictionary<string, decimal> givens,
        IReadOnlyDictionary<string, double> right
    )
    {
        if (part.Misconceptions.Count == 0)
            return null;
        var misconception = part.Misconceptions[pick % part.Misconceptions.Count];
        return KeyValues.Number(misconception.Formula, KeyValues.Names(givens, right)) is { } number ? (number, misconception.Id) : null;
    }

    /// <summary>A wrong option that no misconception picks.</summary>
    private static double? Unnamed(Part part, IReadOnlyDictionary<string, decimal> givens, IReadOnlyDictionary<string, double> right)
    {
        var named = part
            .Misconceptions.Select(one => KeyValues.Number(one.Formula, KeyValues.Names(givens, right)))
            .Append(right[part.Id])
            .ToHashSet();
        return Enumerable
            .Range(1, part.Choice!.From.Options.Count)
            .Select(number => (double?)number)
            .FirstOrDefault(number => !named.Contains(number));
    }
}
