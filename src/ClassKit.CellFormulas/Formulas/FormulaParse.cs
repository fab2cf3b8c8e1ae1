using System.Diagnostics.CodeAnalysis;
using ClassKit.CellFormulas.Syntax;

namespace ClassKit.CellFormulas.Formulas;

/// <summary>What came of parsing a text: a formula or an error, never both and never neither.</summary>
public readonly record struct FormulaParse
{
    internal FormulaParse(CellFormula formula) => Formula = formula;

    internal FormulaParse(SyntaxError error) => Error = error;

    /// <summary>The formula; null if the text is none.</summary>
    public CellFormula? Formula { get; }

    /// <summary>Why the text is no formula; null if it is one.</summary>
    public SyntaxError? Error { get; }

    /// <summary>Gives whichever there is.</summary>
    /// <returns>True for a formula.</returns>
    public bool TryGet([NotNullWhen(true)] out CellFormula? formula, [NotNullWhen(false)] out SyntaxError? error)
    {
        (formula, error) = (Formula, Error);
        return formula is not null;
    }
}
