using ClassKit.Grading.Findings;
using ClassKit.Grading.Results;

namespace ClassKit.Grading.Intake;

/// <summary>What the inside of a returned file came to, whatever the file is called.</summary>
/// <param name="File">The file, without its workbook.</param>
/// <param name="Owner">Whose it is.</param>
/// <param name="Answers">Null for a file that is no workbook of this deal, or nobody's.</param>
/// <param name="Flags">What the instructor should see.</param>
internal sealed record JudgedContent(ReturnedFile File, Owner Owner, IReadOnlyList<AnswerGrade>? Answers, IReadOnlyList<Flag> Flags)
{
    /// <summary>Which deal it is from, if it is another than the one at hand.</summary>
    public OtherDeal? Other { get; init; }

    /// <summary>What it says of its deal, where that does not fit the numbers in it.</summary>
    public DealMarks? Doubtful { get; init; }
}
