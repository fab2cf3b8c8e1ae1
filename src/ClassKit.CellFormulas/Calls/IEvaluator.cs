using ClassKit.CellFormulas.Syntax;
using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Calls;

/// <summary>What evaluates the arguments of a call.</summary>
internal interface IEvaluator
{
    Run Run { get; }

    CellSource Cells { get; }

    /// <summary>What references hold.</summary>
    Rectangles Rectangles { get; }

    /// <summary>True while an array formula, or an argument that is taken as an array, is evaluated.</summary>
    bool WantsArrays { get; }

    /// <summary>The value of a part of a formula, a reference unresolved.</summary>
    FormulaValue Evaluate(FormulaNode node);

    /// <summary>The value of an operand: a single value or an array, never a reference.</summary>
    FormulaValue Operand(FormulaNode node);

    /// <summary>As <see cref="Evaluate"/>, with operators inside working element by element.</summary>
    FormulaValue InArrayMode(FormulaNode node);
}
