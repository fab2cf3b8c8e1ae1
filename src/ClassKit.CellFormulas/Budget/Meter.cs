using System.Runtime.CompilerServices;

namespace ClassKit.CellFormulas.Budget;

/// <summary>
/// Counts the work of evaluations and ends them at their limits. Whatever hands values to functions (arrays, arguments, conversions,
/// patterns) takes its share here by itself, so that no function can touch many values without paying, and past the last step none can go
/// on.
/// </summary>
/// <param name="limits">The most that may be taken.</param>
internal sealed class Meter(EvaluationLimits limits)
{
    /// <summary>A tick is what looking at a value that is at hand takes; visiting an operator, a function or a cell takes a step.</summary>
    public const int TicksPerStep = 8;

    private const int CharactersPerTick = 8;
    private const int TicksBetweenLooks = 8 * 1024;

    private readonly long _mostTicks = (long)limits.Steps * TicksPerStep;
    private CancellationToken _cancellation;
    private long _ticks;
    private long _before;
    private long _allowed = long.MaxValue;
    private long _nextLook;

    /// <summary>How many steps were taken since the count began.</summary>
    public long Spent => (_before + _ticks) / TicksPerStep;

    /// <summary>Starts the count of all steps anew.</summary>
    /// <param name="allowed">How many there may be.</param>
    public void Reset(long allowed)
    {
        (_ticks, _before, _nextLook) = (0, 0, 0);
        var steps = Math.Min(allowed, limits.AllSteps);
        _allowed = steps > long.MaxValue / TicksPerStep ? long.MaxValue : steps * TicksPerStep;
    }

    /// <summary>Starts the count of one evaluation.</summary>
    public void Start(CancellationToken cancellation)
    {
        _before += _ticks;
        (_ticks, _nextLook, _cancellation) = (0, 0, cancellation);
    }

    /// <summary>Counts work.</summary>
    /// <exception cref="OutOfStepsException">That was more than there may be.</exception>
    /// <exception cref="OperationCanceledException">Nobody waits for the result any more.</exception>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public void Take(long ticks)
    {
        if ((_ticks += ticks) > _nextLook)
            Look();
    }

    /// <summary>Counts work in steps.</summary>
    public void Spend(long steps) => Take(Math.Min(steps, long.MaxValue / (4 * TicksPerStep)) * TicksPerStep);

    /// <summary>Counts characters that are read one by one.</summary>
    public void TakeForCharacters(long count) => Take(count / CharactersPerTick);

    /// <summary>Counts looking for one text in another.</summary>
    public void TakeForSearch(int part, int text) => Take((long)part * text / CharactersPerTick);

    /// <summary>Counts putting so many things in order.</summary>
    public void TakeForSorting(int count) => Take(2L * count * (1 + int.Log2(Math.Max(1, count))));

    private void Look()
    {
        _cancellation.ThrowIfCancellationRequested();
        if (_ticks > _mostTicks)
            throw new OutOfStepsException(limits.Steps);
        if (_before + _ticks > _allowed)
            throw new OutOfStepsException(null);
        _nextLook = Math.Min(_ticks + TicksBetweenLooks, Math.Min(_mostTicks, _allowed - _before));
    }
}
