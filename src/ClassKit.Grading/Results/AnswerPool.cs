using System.Runtime.CompilerServices;

namespace ClassKit.Grading.Results;

/// <summary>
/// Keeps the answers of a class in little room: what several of them have in common is there once, and an answer is put together when it is
/// asked for.
/// </summary>
/// <remarks>
/// Most students who answer a part in one way write the same formula, and the same is found of it: of ten thousand a few hundred differ.
/// Can be used from several threads.
/// </remarks>
public sealed class AnswerPool : IEqualityComparer<AnswerGrade>
{
    private static readonly Dictionary<string, double> NoEarlier = [];

    private readonly Dictionary<AnswerGrade, AnswerGrade> _shared;
    private readonly Lock _lock = new();

    /// <summary>Nothing yet.</summary>
    public AnswerPool() => _shared = new(this);

    /// <summary>The same answers in little room.</summary>
    public IReadOnlyList<AnswerGrade> Pack(IEnumerable<AnswerGrade> answers)
    {
        ArgumentNullException.ThrowIfNull(answers);
        lock (_lock)
            return new PackedAnswers([
                .. answers.Select(answer => new PackedAnswers.Own(
                    Shared(answer),
                    answer.Value,
                    answer.Expected,
                    answer.OwnEarlierAnswers.Count == 0 ? NoEarlier : answer.OwnEarlierAnswers
                )),
            ]);
    }

    private AnswerGrade Shared(AnswerGrade answer)
    {
        var common = answer with { Value = default, Expected = 0, OwnEarlierAnswers = NoEarlier };
        if (_shared.TryGetValue(common, out var known))
            return known;
        _shared[common] = common;
        return common;
    }

    // Field by field, so that a new one is not forgotten; lists are compared by what is in them.
    bool IEqualityComparer<AnswerGrade>.Equals(AnswerGrade? x, AnswerGrade? y) =>
        x is not null && y is not null && x.Findings.SequenceEqual(y.Findings) && x with { Findings = y.Findings } == y;

    int IEqualityComparer<AnswerGrade>.GetHashCode(AnswerGrade obj) =>
        HashCode.Combine(RuntimeHelpers.GetHashCode(obj.Part), obj.Outcome, obj.Points, obj.Formula);
}
