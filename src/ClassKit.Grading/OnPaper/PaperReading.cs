namespace ClassKit.Grading.OnPaper;

/// <summary>What a workbook of answers on paper holds.</summary>
/// <param name="Work">A student each; students without answers are not among them.</param>
/// <param name="Faults">What was typed and is not taken over.</param>
public sealed record PaperReading(IReadOnlyList<PaperWork> Work, IReadOnlyList<PaperFault> Faults)
{
    /// <summary>Nothing was answered on paper.</summary>
    public static PaperReading Nothing { get; } = new([], []);

    /// <summary>Why nothing could be read; null if it could.</summary>
    public PaperRefusal? Refusal { get; init; }
}
