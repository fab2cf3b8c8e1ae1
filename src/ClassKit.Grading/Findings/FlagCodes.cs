namespace ClassKit.Grading.Findings;

/// <summary>The codes of <see cref="Flag"/>s, stable over versions.</summary>
public static class FlagCodes
{
    /// <summary>A given's cell no longer holds what was dealt.</summary>
    public const string GivenOverwritten = "given-overwritten";

    /// <summary>The file's name speaks of another student than the workbook inside.</summary>
    public const string NameDiffers = "file-name-differs";

    /// <summary>The numbers in the workbook are those dealt to another student than the one whose id it bears.</summary>
    public const string NumbersOfAnother = "numbers-of-another";

    /// <summary>A file under another student's name holds work of one who sent a file of their own.</summary>
    public const string UnderOtherName = "under-other-name";

    /// <summary>The student's id was gone from the workbook; its numbers or its name told whose it is.</summary>
    public const string OwnerInferred = "owner-inferred";

    /// <summary>An exercise was answered on another sheet than the one it was dealt on.</summary>
    public const string OtherSheet = "other-sheet";

    /// <summary>A workbook saved after it was due.</summary>
    public const string Late = "late";

    /// <summary>A workbook that does not say when it was saved, where there is a due moment.</summary>
    public const string SavedUnknown = "saved-unknown";

    /// <summary>A workbook saved in time or late, according to which clock its time is of.</summary>
    public const string SavedUnclear = "saved-unclear";

    /// <summary>A workbook that says it was saved long after it came.</summary>
    public const string SavedAfterItCame = "saved-after-it-came";

    /// <summary>A student returned more than one file.</summary>
    public const string SeveralFiles = "several-files";

    /// <summary>A student returned a file and answered on paper as well.</summary>
    public const string PaperBeside = "paper-beside-file";

    /// <summary>A student returned a workbook of another deal, which was not graded.</summary>
    public const string OtherDeal = "other-deal";

    /// <summary>What a workbook says of its deal does not agree with itself or with its numbers.</summary>
    public const string DealDoubtful = "deal-doubtful";

    /// <summary>A formula that we cannot evaluate.</summary>
    public const string FormulaToLookAt = "formula-to-look-at";

    /// <summary>Wrong numbers that are right for what another student was dealt.</summary>
    public const string FitsAnotherVariant = "fits-another-variant";

    /// <summary>Wrong answers written exactly as another student wrote them, beyond chance.</summary>
    public const string SharedMistakes = "shared-mistakes";

    /// <summary>A workbook last saved by the person who saved another student's.</summary>
    public const string SharedAuthor = "shared-author";

    /// <summary>A file that cannot be read and seems to be this student's.</summary>
    public const string UnreadableFile = "unreadable-file";
}
