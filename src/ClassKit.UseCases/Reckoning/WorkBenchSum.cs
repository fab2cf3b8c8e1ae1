using ClassKit.BenchSums.Catalogue;
using ClassKit.Content.Diagnostics;
using ClassKit.UseCases.Running;

namespace ClassKit.UseCases.Reckoning;

/// <summary>Works out a computation of the trade from what was typed.</summary>
public static class WorkBenchSum
{
    /// <summary>The sum worked out, or every problem with what was typed; the place of a problem is the name of the input.</summary>
    /// <exception cref="OperationCanceledException">The run was stopped.</exception>
    public static Reading<WorkedSum> Run(BenchSumRequest request, Run run)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(run);
        run.Begin(RunStep.Reckoning);
        var sum = request.Sum;
        var reading = SumReading.Of(sum, request.Typed);
        if (reading.Values is not { } values)
            return new(
                null,
                [
                    .. reading.Problems.Select(problem => new Diagnostic(
                        problem.Name,
                        null,
                        problem.Why.Message.TrimEnd('.'),
                        problem.Why.Remedy
                    )),
                ]
            );
        return sum.Work(values).TryGet(out var result, out var why)
            ? new(new(sum, reading.Typed, result), [])
            : new(null, [new(sum.Id, null, why.Message.TrimEnd('.'), why.Remedy)]);
    }
}
