namespace ClassKit.Grading.NearMisses;

/// <summary>
/// How much work looking for wrong turns may be, in steps of evaluation. What students wrote and what a lesson of somebody else's asks must
/// not make a class wait.
/// </summary>
internal static class SearchBudget
{
    /// <summary>For a student's formula on one input. The longest that an honest one has taken so far is below a hundred.</summary>
    public const int OneFormula = 2_000;

    /// <summary>
    /// For the neighbours of one key on all inputs; ten times what any shipped key needs. Past it the likelier ones are kept.
    /// </summary>
    public const long OneKey = 1_000_000;

    /// <summary>Nodes of a key at which edits are tried, from the whole formula inwards; no shipped key has half as many.</summary>
    public const int Places = 200;
}
