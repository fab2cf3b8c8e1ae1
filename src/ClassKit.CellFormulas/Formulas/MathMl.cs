using ClassKit.CellFormulas.Printing;

namespace ClassKit.CellFormulas.Formulas;

/// <summary>Typesets formulas as MathML, for worked solutions.</summary>
/// <remarks>
/// Elements of MathML Core only; no script, no style. The same formula always gives the same text, and it is well-formed XML.
/// </remarks>
public static class MathMl
{
    /// <summary>
    /// A formula as a displayed equation's side: fractions set as fractions, × for times, the functions of everyday kitchen arithmetic in
    /// words or signs.
    /// </summary>
    /// <param name="formula">The formula.</param>
    /// <param name="name">What to show for a name, or for a reference in its canonical text (<c>B5</c>); null to show it as
    /// written.</param>
    /// <returns>A <c>math</c> element.</returns>
    public static string Write(CellFormula formula, Func<string, MathMlOperand?> name)
    {
        ArgumentNullException.ThrowIfNull(formula);
        ArgumentNullException.ThrowIfNull(name);
        return $"<math display=\"block\">{new MathMlPrinter(name).Print(formula.Root)}</math>";
    }

    /// <summary>A formula and its value: <c>flour × hydration = 413 g</c>.</summary>
    /// <param name="formula">The formula.</param>
    /// <param name="name">What to show for a name, as for <see cref="Write(CellFormula, Func{string, MathMlOperand})"/>.</param>
    /// <param name="result">What stands after the equals sign.</param>
    /// <returns>A <c>math</c> element.</returns>
    public static string Write(CellFormula formula, Func<string, MathMlOperand?> name, MathMlOperand result)
    {
        ArgumentNullException.ThrowIfNull(formula);
        ArgumentNullException.ThrowIfNull(name);
        ArgumentNullException.ThrowIfNull(result);
        return $"<math display=\"block\"><mrow>{new MathMlPrinter(name).Print(formula.Root)}<mo>=</mo>{MathMlPrinter.Operand(result)}</mrow></math>";
    }
}
