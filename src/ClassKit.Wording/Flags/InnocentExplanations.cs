using ClassKit.Grading.Findings;

namespace ClassKit.Wording.Flags;

/// <summary>What may lie behind a fact without anybody having done wrong; shown wherever the fact is.</summary>
public static class InnocentExplanations
{
    /// <summary>The explanation for a flag; null for facts that accuse nobody anyway.</summary>
    public static string? Of(Flag flag) =>
        flag switch
        {
            Flag.NameDiffers or Flag.UnderOtherName =>
                "Friends hand in for one another, shared machines mix up downloads, and a file is easily saved under the wrong name.",
            Flag.NumbersOfAnother =>
                "A damaged file replaced by a friend’s empty one, or two who worked from one sheet: then the formulas are still their own.",
            Flag.FitsAnotherVariant =>
                "Two may have worked side by side and read from the wrong screen, opened each other’s file by mistake, or explained a problem on one set of numbers.",
            Flag.SharedMistakes =>
                "Two may have learned together, followed the same wrong example, or had the same helper; that is worth teaching, and learning together may be allowed.",
            Flag.SharedAuthor =>
                "A shared machine, a family computer, a friend’s licence or a helper at the school desk leaves one name in several files.",
            Flag.GivenOverwritten => "A slip of the hand, or trying out other numbers to understand the problem.",
            Flag.SavedUnknown => "Some programs write no time into what they save or export.",
            Flag.SavedUnclear => "Some programs write what the clock shows, without saying where the clock is.",
            Flag.SavedAfterItCame =>
                "A clock that is set wrong, a workbook that was opened and saved once more after it had come, or a program that gives copies an older date.",
            Flag.SavedLate => "A clock that is set wrong, or a workbook that was opened and saved once more after it had been handed in.",
            Flag.OwnerInferred => "Programs lose names and cells when they convert a file.",
            _ => null,
        };
}
