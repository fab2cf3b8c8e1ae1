using System.Diagnostics;
using System.Globalization;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Guarantees;
using ClassKit.Exercises.Texts;

namespace ClassKit.Wording.Guarantees;

/// <summary>What an author is told of a draw that breaks a rule.</summary>
public static class BreachWords
{
    /// <summary>A clause that is the same for every draw with this fault: <c>the constraint `=water&gt;300` does not hold</c>.</summary>
    public static string Because(Breach breach) =>
        breach switch
        {
            Breach.NoNumber fact => $"the key of part `{fact.Part.Id}`, `{fact.Part.Key.Text}`, gives no number",
            Breach.NotWritable fact => $"the answer to part `{fact.Part.Id}` cannot be written down",
            Breach.OutOfReason fact => $"the answer to part `{fact.Part.Id}` {FaultOf(fact.How)}",
            Breach.AnswerTooLong fact => $"the answer to part `{fact.Part.Id}` needs more than {fact.Most} digits",
            Breach.ConstraintBroken { IsComparison: true } fact => $"the constraint `{fact.Constraint.Text}` does not hold",
            Breach.ConstraintBroken fact => $"the constraint `{fact.Constraint.Text}` is neither true nor false",
            Breach.WrongWhenRounded fact =>
                $"part `{fact.Part.Id}` goes wrong when earlier answers are rounded as the answer key prints them",
            Breach.UnevenEffort => "the numbers are harder or easier to work with than those of other students",
            Breach.GivenTooFine fact => $"no instrument shows `{fact.Of.Id}` so finely",
            Breach.GivenTooLong fact => $"`{fact.Of.Id}` has more digits than a person would write down",
            Breach.CloseToRight fact =>
                $"the misconception `{fact.Misconception.Id}` of part `{fact.Part.Id}` comes too close to the right answer",
            Breach.Alike fact =>
                $"the misconceptions `{fact.Earlier.Id}` and `{fact.Later.Id}` of part `{fact.Part.Id}` cannot be told apart",
            Breach.AtHalf fact => $"the answer to part `{fact.Part.Id}` lies at a half between two roundings",
            Breach.AtStep fact => $"the key of part `{fact.Part.Id}`, `{fact.Part.Key.Text}`, stands at a tie or a limit",
            Breach.CopiesGiven fact => $"part `{fact.Part.Id}` is answered by copying the given `{fact.From.Id}`",
            Breach.CopiesAnswer fact => $"part `{fact.Part.Id}` is answered by copying the answer to part `{fact.From.Id}`",
            Breach.CloseAfterSlip fact =>
                $"after the misconception `{fact.Slip.Id}` in part `{fact.In.Id}`, the misconception `{fact.Later.Id}` of part `{fact.Part.Id}` comes too close to the right method",
            _ => throw new UnreachableException($"No words for {breach}."),
        };

    /// <summary>A clause with the numbers met in one draw; empty if there is nothing to add.</summary>
    public static string Seen(Breach breach) =>
        breach switch
        {
            Breach.NoNumber fact => $"it gives {fact.Given}",
            Breach.NotWritable fact =>
                $"rounded to {ResultText.Of(fact.Part, fact.Answer)} it is out of tolerance, which is {Room(fact.Part, fact.Answer)}",
            Breach.OutOfReason fact => $"it is {ResultText.Of(fact.Part, fact.Answer)}",
            Breach.AnswerTooLong fact => $"it is {ResultText.Of(fact.Part, fact.Answer)}",
            Breach.ConstraintBroken fact => string.Join(
                ", ",
                fact.Answers.Select(answer => $"`{answer.Part.Id}` is {ResultText.Of(answer.Part, answer.Answer)}")
            ),
            Breach.WrongWhenRounded fact =>
                $"it then gives {(fact.Found is { } found ? ResultText.Of(fact.Part, found) : "no number")}, and {Right(fact.Part, fact.Right)}",
            Breach.UnevenEffort fact =>
                $"digits, steps and carries count {fact.Effort}, and {fact.Allowed.Low} to {fact.Allowed.High} are allowed",
            Breach.GivenTooFine fact => $"it is {GivenText.Of(fact.Of, fact.Value)}",
            Breach.GivenTooLong fact => $"it is {GivenText.Of(fact.Of, fact.Value)}",
            Breach.CloseToRight fact => $"it gives {ResultText.Of(fact.Part, fact.Mistaken)}, and {Right(fact.Part, fact.Right)}",
            Breach.Alike fact =>
                $"they give {ResultText.Of(fact.Part, fact.OfEarlier)} and {ResultText.Of(fact.Part, fact.OfLater)}, and the tolerance is {Room(fact.Part, fact.OfLater)}",
            Breach.AtHalf fact => $"it is {fact.Answer.ToString("G6", CultureInfo.InvariantCulture)}, which could be rounded up or down",
            Breach.AtStep fact => $"the least change of `{fact.Moved.Id}` makes a step away from {ResultText.Of(fact.Part, fact.Right)}",
            Breach.CopiesGiven fact =>
                $"{GivenText.Of(fact.From, fact.Value)} stands on the sheet, and {ResultText.Of(fact.Part, fact.Right)} is asked",
            Breach.CopiesAnswer fact =>
                $"{ResultText.Of(fact.From, fact.Answer)} stands on the sheet, and {ResultText.Of(fact.Part, fact.Right)} is asked",
            Breach.CloseAfterSlip fact =>
                $"it gives {ResultText.Of(fact.Part, fact.Mistaken)}, and the right method carried on gives {ResultText.Of(fact.Part, fact.Carried)}",
            _ => throw new UnreachableException($"No words for {breach}."),
        };

    /// <summary>What the author can do, in one sentence.</summary>
    public static string WhatToDo(Breach breach) =>
        breach switch
        {
            Breach.NoNumber => "Change the key or the ranges, or add a constraint that keeps such numbers out.",
            Breach.NotWritable => "Widen the tolerance to what a person can write and a scale can show.",
            Breach.OutOfReason => "Change the ranges, ask in another unit, or add a constraint that keeps such answers out.",
            Breach.AnswerTooLong => "Widen the tolerance to what a scale can show.",
            Breach.ConstraintBroken { IsComparison: true } => "Narrow the ranges to values that fit together, or loosen the constraint.",
            Breach.ConstraintBroken => "Write a comparison, such as `=water<600`.",
            Breach.WrongWhenRounded => "Widen its tolerance, or narrow the tolerance of the earlier part so that more of its digits count.",
            Breach.UnevenEffort =>
                "Choose ranges of numbers that are alike in their digits, or state a wider band at the top, such as `effort: 20 to 60`.",
            Breach.GivenTooFine fact => string.Create(
                CultureInfo.InvariantCulture,
                $"Choose a lowest value and a step that are multiples of {fact.Step} {fact.Of.Unit}."
            ),
            Breach.GivenTooLong => "Choose a larger step.",
            Breach.CloseToRight or Breach.CloseAfterSlip =>
                "Choose ranges in which the wrong method matters, narrow the tolerance, or drop the misconception.",
            Breach.Alike => "Choose ranges in which they differ, narrow the tolerance, or keep only one of them.",
            Breach.AtHalf => "Round to another step, give a tolerance instead, or add a constraint that keeps halves out.",
            Breach.AtStep => "Widen the tolerance to the size of that step, or add a constraint that keeps ties out.",
            Breach.CopiesGiven or Breach.CopiesAnswer => "Choose ranges in which the two differ, or ask for something else.",
            _ => throw new UnreachableException($"No words for {breach}."),
        };

    private static string FaultOf(AnswerFault fault) =>
        fault switch
        {
            AnswerFault.Negative => "is less than nothing",
            AnswerFault.TooLarge => "is a million or more",
            AnswerFault.Nothing => "is nothing within its tolerance",
            AnswerFault.TooSmall => "is less than a thousandth",
        };

    private static string Right(Part part, double right) => $"{ResultText.Of(part, right)} is right within {Room(part, right)}";

    /// <summary>The tolerance around a value, with its unit.</summary>
    private static string Room(Part part, double value)
    {
        var room = part.Tolerance.Around(value);
        return part.Unit.IsPercent
            ? string.Create(CultureInfo.InvariantCulture, $"{part.Unit.Shown(room):G3} percentage points")
            : string.Create(CultureInfo.InvariantCulture, $"{room:G3} {part.Unit}").TrimEnd();
    }
}
