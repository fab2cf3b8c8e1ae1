namespace ClassKit.Terms.Work;

/// <summary>What a class is set.</summary>
public enum WorkKind
{
    /// <summary>Practice that was dealt and graded.</summary>
    CalculationSet,

    /// <summary>Work at the bench, marked by a practical rubric.</summary>
    BenchWork,

    /// <summary>Answers in words, marked by hand.</summary>
    WrittenAnswers,

    /// <summary>Marks that come from anywhere else.</summary>
    TypedMarks,
}
