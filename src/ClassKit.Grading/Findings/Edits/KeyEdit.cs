using ClassKit.CellFormulas.Syntax;

namespace ClassKit.Grading.Findings.Edits;

/// <summary>
/// One thing that is otherwise in a student's formula than in the key. Whoever takes in all of them has taken in every edit there is.
/// </summary>
public abstract record KeyEdit
{
    private KeyEdit(string right, string written) => (Right, Written) = (right, written);

    /// <summary>What the key has there: a formula over the exercise's names, without <c>=</c>.</summary>
    public string Right { get; }

    /// <summary>What stands there instead, in the same names.</summary>
    public string Written { get; }

    /// <summary>Another operation between the same two: added where something is to be divided out.</summary>
    /// <param name="Right">As the key has it.</param>
    /// <param name="Written">As it is.</param>
    /// <param name="Belongs">The key's operation.</param>
    /// <param name="Used">The other.</param>
    public sealed record OtherOperation(string Right, string Written, BinaryOperator Belongs, BinaryOperator Used)
        : KeyEdit(Right, Written);

    /// <summary>A difference, a quotient or a power the other way round.</summary>
    /// <param name="Right">As the key has it.</param>
    /// <param name="Written">As it is.</param>
    /// <param name="Operation">Which.</param>
    public sealed record TurnedRound(string Right, string Written, BinaryOperator Operation) : KeyEdit(Right, Written);

    /// <summary>A term, a factor or a divisor is missing.</summary>
    /// <param name="Right">As the key has it.</param>
    /// <param name="Written">As it is.</param>
    /// <param name="Term">What is missing.</param>
    /// <param name="Operation">What the key does with it.</param>
    public sealed record LeftOut(string Right, string Written, string Term, BinaryOperator Operation) : KeyEdit(Right, Written);

    /// <summary>A term or a factor counts twice.</summary>
    /// <param name="Right">As the key has it.</param>
    /// <param name="Written">As it is.</param>
    /// <param name="Term">What counts twice.</param>
    public sealed record CountedTwice(string Right, string Written, string Term) : KeyEdit(Right, Written);

    /// <summary>Something beside what the key has: divided by two as well, or another quantity of the sheet taken in.</summary>
    /// <param name="Right">As the key has it.</param>
    /// <param name="Written">As it is.</param>
    /// <param name="Term">What came in.</param>
    /// <param name="Operation">What was done with it.</param>
    public sealed record TakenIn(string Right, string Written, string Term, BinaryOperator Operation) : KeyEdit(Right, Written);

    /// <summary>Brackets that are missing, or stand around something else.</summary>
    /// <param name="Right">As the key has it.</param>
    /// <param name="Written">As it is.</param>
    public sealed record OtherBrackets(string Right, string Written) : KeyEdit(Right, Written);

    /// <summary>Another cell of the sheet: a given, or the answer of another part.</summary>
    /// <param name="Right">The name that belongs there.</param>
    /// <param name="Written">The one that was used.</param>
    /// <param name="IsWhole">True if a percentage is taken of it, so that it is taken of the wrong whole.</param>
    public sealed record OtherCell(string Right, string Written, bool IsWhole) : KeyEdit(Right, Written);

    /// <summary>A share for what is left without it, or for the whole with it, or the other way round.</summary>
    /// <param name="Right">As the key has it.</param>
    /// <param name="Written">As it is.</param>
    public sealed record ShareForRest(string Right, string Written) : KeyEdit(Right, Written);

    /// <summary>A share put on at one end where it belongs taken off at the other: of another whole.</summary>
    /// <param name="Right">As the key has it.</param>
    /// <param name="Written">As it is.</param>
    public sealed record ShareOfOtherEnd(string Right, string Written) : KeyEdit(Right, Written);

    /// <summary>One divided by it.</summary>
    /// <param name="Right">As the key has it.</param>
    /// <param name="Written">As it is.</param>
    public sealed record Inverse(string Right, string Written) : KeyEdit(Right, Written);

    /// <summary>A step from one unit to another that is not asked for, or not taken.</summary>
    /// <param name="Right">As the key has it.</param>
    /// <param name="Written">As it is.</param>
    /// <param name="From">The unit that it is in.</param>
    /// <param name="To">The unit that was made of it.</param>
    public sealed record OtherUnit(string Right, string Written, string From, string To) : KeyEdit(Right, Written);

    /// <summary>Another constant: 30 for 32.</summary>
    /// <param name="Right">The key's.</param>
    /// <param name="Written">The other.</param>
    public sealed record OtherConstant(string Right, string Written) : KeyEdit(Right, Written);

    /// <summary>The other sign.</summary>
    /// <param name="Right">As the key has it.</param>
    /// <param name="Written">As it is.</param>
    public sealed record OtherSign(string Right, string Written) : KeyEdit(Right, Written);

    /// <summary>Rounded where the key does not, or otherwise than the key does.</summary>
    /// <param name="Right">As the key has it.</param>
    /// <param name="Written">As it is.</param>
    public sealed record OtherRounding(string Right, string Written) : KeyEdit(Right, Written);
}
