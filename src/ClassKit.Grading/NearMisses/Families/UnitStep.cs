using ClassKit.CellFormulas.Syntax;

namespace ClassKit.Grading.NearMisses.Families;

/// <summary>A step from the unit of a quantity to another.</summary>
/// <param name="To">The other unit; empty for a percentage that is read as a number, or the other way round.</param>
/// <param name="Take">Makes the formula of the quantity in the other unit.</param>
internal sealed record UnitStep(string To, Func<FormulaNode, FormulaNode> Take);
