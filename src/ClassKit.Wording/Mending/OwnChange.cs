using ClassKit.CellFormulas.Syntax;

namespace ClassKit.Wording.Mending;

/// <summary>
/// The one thing to change in a formula for it to be the key, as seen in that formula: an operation is what is done to the whole in which
/// it stands.
/// </summary>
internal abstract record OwnChange
{
    private OwnChange() { }

    /// <summary>Something was done with a term that should be done otherwise.</summary>
    /// <param name="Term">With what.</param>
    /// <param name="Used">What was done.</param>
    /// <param name="Belongs">What should be.</param>
    public sealed record Sign(Flat Term, BinaryOperator Used, BinaryOperator Belongs) : OwnChange;

    /// <summary>Brackets missing, or around something else.</summary>
    public sealed record Brackets : OwnChange;

    /// <summary>The whole with the other sign.</summary>
    public sealed record Negated : OwnChange;

    /// <summary>A name or a number for another.</summary>
    /// <param name="Written">What stands there.</param>
    /// <param name="Right">What belongs there.</param>
    public sealed record OtherLeaf(Flat Written, Flat Right) : OwnChange;

    /// <summary>Two that have changed places.</summary>
    /// <param name="One">The one.</param>
    /// <param name="Other">The other.</param>
    public sealed record Swapped(Flat One, Flat Other) : OwnChange;

    /// <summary>A difference, a quotient or a power the other way round.</summary>
    /// <param name="Operation">Which.</param>
    /// <param name="First">What stands first; null where there are more than two.</param>
    /// <param name="Last">What stands last; null where there are more than two.</param>
    public sealed record Turned(BinaryOperator Operation, Flat? First, Flat? Last) : OwnChange;

    /// <summary>Something that the method does not use there.</summary>
    /// <param name="Term">What.</param>
    /// <param name="Used">What was done with it.</param>
    /// <param name="Beside">How often else the same is done with it there.</param>
    public sealed record TakenIn(Flat Term, BinaryOperator Used, int Beside) : OwnChange;

    /// <summary>Something is missing.</summary>
    /// <param name="Term">What.</param>
    /// <param name="Belongs">What should be done with it.</param>
    /// <param name="Beside">What stands alone where it is missing.</param>
    /// <param name="IsFirst">True if it belongs in front: to be divided, or to be subtracted from.</param>
    /// <param name="IsElsewhere">True if it stands elsewhere in the formula.</param>
    public sealed record LeftOut(Flat Term, BinaryOperator Belongs, Flat Beside, bool IsFirst, bool IsElsewhere = false) : OwnChange;

    /// <summary>A share for what is left without it or for the whole with it, or the other way round.</summary>
    /// <param name="Written">What stands there.</param>
    /// <param name="Right">What belongs there.</param>
    public sealed record Share(Flat Written, Flat Right) : OwnChange;

    /// <summary>Rounded where the method does not round.</summary>
    /// <param name="Call">The function.</param>
    public sealed record Rounded(Flat.Call Call) : OwnChange;

    /// <summary>The same for the same in several places.</summary>
    /// <param name="Written">What stands there.</param>
    /// <param name="Right">What belongs there.</param>
    /// <param name="Times">How often.</param>
    public sealed record Everywhere(Flat Written, Flat Right, int Times) : OwnChange;

    /// <summary>One thing was done where quite another should be.</summary>
    /// <param name="Term">With what it was done.</param>
    /// <param name="Used">What.</param>
    /// <param name="RightTerm">With what something should be done.</param>
    /// <param name="Belongs">What.</param>
    public sealed record Exchanged(Flat Term, BinaryOperator Used, Flat RightTerm, BinaryOperator Belongs) : OwnChange;

    /// <summary>A factor of a whole sum that belongs to one of its terms.</summary>
    /// <param name="Factor">The factor.</param>
    /// <param name="Used">Multiplied or divided.</param>
    /// <param name="Only">The term that it belongs to.</param>
    public sealed record TooFar(Flat Factor, BinaryOperator Used, Flat Only) : OwnChange;

    /// <summary>A longer piece for another.</summary>
    /// <param name="Written">What stands there.</param>
    /// <param name="Right">What belongs there.</param>
    public sealed record OtherPiece(Flat Written, Flat Right) : OwnChange;
}
