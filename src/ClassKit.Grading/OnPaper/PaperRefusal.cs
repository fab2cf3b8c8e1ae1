using ClassKit.Grading.Findings.Refusals;

namespace ClassKit.Grading.OnPaper;

/// <summary>Why a file is no workbook of answers on paper for a deal.</summary>
public abstract record PaperRefusal
{
    private PaperRefusal() { }

    /// <summary>It cannot be read.</summary>
    /// <param name="Why">Why not.</param>
    public sealed record Unreadable(Refusal Why) : PaperRefusal;

    /// <summary>No sheet has a table of students and parts.</summary>
    /// <param name="Head">The word that the column of ids has.</param>
    public sealed record NoTable(string Head) : PaperRefusal;

    /// <summary>It is for another deal.</summary>
    /// <param name="Codes">The codes of the deals that it names.</param>
    /// <param name="Wanted">The code of the deal at hand.</param>
    public sealed record OtherDeal(IReadOnlyList<string> Codes, string Wanted) : PaperRefusal;
}
