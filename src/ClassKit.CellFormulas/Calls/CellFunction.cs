using ClassKit.CellFormulas.Evaluating;
using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Functions;

/// <summary>What a function does with its arguments.</summary>
internal delegate FormulaValue CellFunction(Call call);
