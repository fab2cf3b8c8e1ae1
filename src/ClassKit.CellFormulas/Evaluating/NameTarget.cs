using ClassKit.CellFormulas.Formulas;
using ClassKit.CellFormulas.Obstacles;
using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Evaluating;

/// <summary>What a name was found to stand for.</summary>
internal sealed class NameTarget
{
    public NameTarget(CellFormula? formula, CellKey? cell) => (Formula, Cell) = (formula, cell);

    public NameTarget(CellError error, Obstacle problem) => (Error, Problem) = (error, problem);

    /// <summary>The formula; null if there is a problem or the text could not be read as one.</summary>
    public CellFormula? Formula { get; }

    /// <summary>The cell, if the formula is nothing but a fixed reference to one.</summary>
    public CellKey? Cell { get; }

    /// <summary>Why there is nothing; null if there is something.</summary>
    public Obstacle? Problem { get; }

    /// <summary>The value of a name with a problem.</summary>
    public CellError Error { get; }
}
