using ClassKit.CellFormulas.Formulas;

namespace ClassKit.Grading.Judging;

/// <summary>What is known of formulas that several students wrote.</summary>
internal sealed class SharedFormulas
{
    /// <summary>What they were parsed to.</summary>
    public FormulaParses Parses { get; } = new();

    /// <summary>What they are over the names of exercises.</summary>
    public NamedFormulas Named { get; } = new();

    /// <summary>For which fresh inputs anything explains them.</summary>
    public Explanations Explanations { get; } = new();
}
