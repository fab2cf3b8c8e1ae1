namespace ClassKit.Grading.Results;

/// <summary>
/// What decided the grades of a class besides what was dealt and returned: with it, a later grading judges alike or says what differs.
/// </summary>
/// <param name="Version">The judge's version; see <see cref="CurrentVersion"/>.</param>
/// <param name="Pools">The fresh inputs that were drawn for the class, for every exercise.</param>
public sealed record JudgeRecord(int Version, IReadOnlyList<JudgeRecord.Pool> Pools)
{
    /// <summary>Raise it by one with every change after which some answer may be judged otherwise.</summary>
    public const int CurrentVersion = 8;

    /// <summary>Later gradings of a class that an earlier version judged, from this one on, go by that version's rules (<see cref="JudgeRules"/>).</summary>
    public const int EarliestKept = 2;

    /// <summary>The version of the program that judged, such as <c>1.0.0</c>; empty if the record does not say.</summary>
    public string Program { get; init; } = typeof(JudgeRecord).Assembly.GetName().Version?.ToString(3) ?? "";

    /// <summary>Which of the pools' inputs every graded student's workbook was tried with.</summary>
    public IReadOnlyList<Choice> Choices { get; init; } = [];

    /// <param name="Exercise">The exercise's id.</param>
    /// <param name="Inputs">The givens of every set by their ids, in the order in which they were drawn.</param>
    public sealed record Pool(string Exercise, IReadOnlyList<IReadOnlyDictionary<string, decimal>> Inputs);

    /// <param name="Student">The student's id.</param>
    /// <param name="Exercise">The exercise's id.</param>
    /// <param name="Places">The inputs' places in the pool, counted from 0.</param>
    public sealed record Choice(string Student, string Exercise, IReadOnlyList<int> Places);
}
