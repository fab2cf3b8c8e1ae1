using ClassKit.CellFormulas.Formulas;

namespace ClassKit.Exercises.Authoring;

/// <summary>
/// A quantity on the way to an answer that nobody is asked for: it keeps a long key readable and is shown in the worked solution.
/// </summary>
/// <param name="Id">The name that keys, misconceptions and constraints use.</param>
/// <param name="What">What it is, a few words.</param>
/// <param name="Key">How it is worked out, over the givens and the steps before.</param>
/// <param name="Unit">Its unit; see <see cref="Authoring.Unit"/> for percent.</param>
public sealed record WorkingStep(string Id, string What, CellFormula Key, Unit Unit);
