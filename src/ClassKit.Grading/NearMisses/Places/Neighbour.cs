using ClassKit.CellFormulas.Formulas;
using ClassKit.CellFormulas.Syntax;
using ClassKit.Grading.Findings.Edits;

namespace ClassKit.Grading.NearMisses.Places;

/// <summary>A wrong formula that is an edit or two of the key away.</summary>
/// <param name="Root">Its tree, without parentheses.</param>
/// <param name="Family">What kind of edit made it, the likelier kinds first.</param>
/// <param name="Say">Makes the edits; only when somebody asks, for there are hundreds of neighbours and few are met.</param>
internal sealed record Neighbour(FormulaNode Root, EditFamily Family, Func<IReadOnlyList<KeyEdit>> Say)
{
    /// <summary>True where a step leaves out what is itself worked out in two or more: that is half of the method, and no slip in it.</summary>
    public bool LosesMuch { get; init; }

    private CellFormula? _formula;
    private IReadOnlyList<KeyEdit>? _edits;

    /// <summary>The formula over the exercise's names.</summary>
    public CellFormula Formula => _formula ??= CellFormula.OfTree(Root);

    /// <summary>The edits, put into words of formulas once.</summary>
    public IReadOnlyList<KeyEdit> Edits => _edits ??= Say();
}
