using System.Collections;
using ClassKit.CellFormulas.Values;

namespace ClassKit.Grading.Results;

/// <summary>A student's answers as <see cref="AnswerPool"/> keeps them.</summary>
internal sealed class PackedAnswers(PackedAnswers.Own[] answers) : IReadOnlyList<AnswerGrade>
{
    public int Count => answers.Length;

    public AnswerGrade this[int index] => answers[index].Whole();

    public IEnumerator<AnswerGrade> GetEnumerator() => answers.Select(answer => answer.Whole()).GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();

    /// <summary>One answer: what it shares with others, and what is its own.</summary>
    internal readonly record struct Own(
        AnswerGrade Shared,
        CellValue Value,
        double Expected,
        IReadOnlyDictionary<string, double> OwnEarlier
    )
    {
        public AnswerGrade Whole() => Shared with { Value = Value, Expected = Expected, OwnEarlierAnswers = OwnEarlier };
    }
}
