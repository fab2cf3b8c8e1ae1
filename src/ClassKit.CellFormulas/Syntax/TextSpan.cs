namespace ClassKit.CellFormulas.Syntax;

/// <summary>A stretch of a formula's text, the leading <c>=</c> counted.</summary>
/// <param name="Start">The index of the first character, from 0.</param>
/// <param name="Length">How many characters.</param>
public readonly record struct TextSpan(int Start, int Length)
{
    /// <summary>The index after the last character.</summary>
    public int End => Start + Length;

    /// <summary>The shortest stretch that holds both.</summary>
    public static TextSpan Covering(TextSpan first, TextSpan last) => new(first.Start, Math.Max(last.End, first.End) - first.Start);
}
