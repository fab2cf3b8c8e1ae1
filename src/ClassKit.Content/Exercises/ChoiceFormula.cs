using ClassKit.CellFormulas.Formulas;
using ClassKit.CellFormulas.Syntax;

namespace ClassKit.Content.Exercises;

/// <summary>What a wrong turn leads to where something is chosen: the option that it picks, and nothing where that one is right.</summary>
internal static class ChoiceFormula
{
    /// <summary>The misconception's formula; null if it picks the right option whatever is given.</summary>
    /// <param name="wrong">What it picks, as an option's number.</param>
    /// <param name="key">What is right, as an option's number.</param>
    public static CellFormula? UnlessRight(CellFormula wrong, CellFormula key)
    {
        if (wrong.Root is NumberNode { Value: var one } && key.Root is NumberNode { Value: var other })
            return one == other ? null : wrong;
        return wrong.Root is NumberNode || key.Root is NumberNode || wrong.ToString() != key.ToString()
            ? CellFormula.Of($"=IF(({wrong.ToString()[1..]})=({key.ToString()[1..]}),NA(),{wrong.ToString()[1..]})")
            : null;
    }
}
