namespace ClassKit.CellFormulas.Budget;

/// <summary>Ends an evaluation that has taken all its steps, wherever it stands; it never leaves the evaluator.</summary>
internal sealed class OutOfStepsException(long? most) : Exception
{
    /// <summary>How many steps one evaluation may take; null if all together have taken theirs.</summary>
    public long? Most => most;
}
