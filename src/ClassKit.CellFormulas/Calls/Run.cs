using ClassKit.CellFormulas.Budget;
using ClassKit.CellFormulas.Obstacles;
using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Calls;

/// <summary>
/// An evaluation under way: what it may take, and whether there will be a value.
/// What cannot be evaluated halts all of it: nothing is then said about the value, and no function can hide it.
/// </summary>
internal sealed class Run(EvaluationLimits limits, DateSystem dates)
{
    public EvaluationLimits Limits => limits;

    /// <summary>Where all work is counted.</summary>
    public Meter Meter { get; } = new(limits);

    /// <summary>From which day dates are counted.</summary>
    public DateSystem Dates => dates;

    /// <summary>True once there will be no value.</summary>
    public bool Halted { get; private set; }

    public EvaluationStatus Status { get; private set; }

    /// <summary>Why there is no value, or what led to an error value.</summary>
    public Obstacle? Reason { get; set; }

    /// <summary>Makes ready for an evaluation with its own count of steps.</summary>
    public void Start(CancellationToken cancellation)
    {
        Meter.Start(cancellation);
        (Halted, Status, Reason) = (false, EvaluationStatus.Computed, null);
    }

    /// <summary>Computes a value, or ends without one where that takes too many steps.</summary>
    public TValue Within<TValue>(Func<TValue> compute, TValue otherwise)
    {
        try
        {
            return compute();
        }
        catch (Exception thrown) when ((thrown as OutOfStepsException ?? thrown.InnerException as OutOfStepsException) is { } end)
        {
            // What a comparison throws comes out of sorting inside of another exception.
            Halted = false;
            Unsupported(end.Most is { } most ? new Obstacle.TooManySteps(most) : new Obstacle.TooManyStepsTogether());
            return otherwise;
        }
        catch (InvalidOperationException sorting) when (sorting.InnerException is OperationCanceledException cancelled)
        {
            throw new OperationCanceledException(cancelled.Message, cancelled, cancelled.CancellationToken);
        }
    }

    /// <summary>Ends the evaluation without a value.</summary>
    public FormulaValue Halt(EvaluationStatus status, Obstacle reason)
    {
        if (Halted)
            return CellError.Value;
        Halted = true;
        Status = status;
        Reason = reason;
        return CellError.Value;
    }

    public FormulaValue Unsupported(Obstacle why) => Halt(EvaluationStatus.Unsupported, why);

    /// <summary>Gives up this attempt, to make another one.</summary>
    public void Interrupt() => Halted = true;

    /// <summary>Begins the other attempt.</summary>
    public void TryAgain() => Halted = false;

    /// <summary>Counts work in steps; at the limit the evaluation ends.</summary>
    public void Spend(long steps) => Meter.Spend(steps);

    /// <summary>True if an array of that many cells is too large; the evaluation has ended then.</summary>
    public bool TooLarge(long cells)
    {
        if (cells <= Limits.ArrayCells)
        {
            Spend(cells);
            return Halted;
        }

        Unsupported(new Obstacle.ArrayTooLarge(Limits.ArrayCells));
        return true;
    }
}
