using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Calls;

/// <summary>What a function does with its arguments.</summary>
internal delegate FormulaValue CellFunction(Call call);
