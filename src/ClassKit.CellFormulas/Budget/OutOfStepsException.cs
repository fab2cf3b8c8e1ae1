using ClassKit.CellFormulas.Obstacles;

namespace ClassKit.CellFormulas.Budget;

/// <summary>Ends an evaluation that has taken all its steps, wherever it stands; it never leaves the evaluator.</summary>
internal sealed class OutOfStepsException(Obstacle obstacle) : Exception
{
    public Obstacle Obstacle => obstacle;
}
