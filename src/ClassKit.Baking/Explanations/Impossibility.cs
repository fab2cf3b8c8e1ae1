namespace ClassKit.Baking.Explanations;

/// <summary>Why a computation has no sensible result: given instead of a number.</summary>
/// <param name="Code">A stable short name, such as <c>no-flour</c>.</param>
/// <param name="Message">What was found and what was expected.</param>
/// <param name="Remedy">What to do about it.</param>
public sealed record Impossibility(string Code, string Message, string Remedy)
{
    /// <summary>The message and the remedy, as one text.</summary>
    public override string ToString() => $"{Message} {Remedy}";
}
