namespace ClassKit.Grading.NearMisses.Places;

/// <summary>Kinds of edit. Where two give the same behaviour the first is the simpler story, and is told.</summary>
internal enum EditFamily
{
    OtherCell,
    ShareForRest,
    LeftOut,
    OtherOperation,
    OtherSignTyped,
    TurnedRound,
    ShareOfOtherEnd,
    OtherUnit,
    OtherConstant,
    Doubled,
    OtherBrackets,
    CountedTwice,
    Inverse,
    OtherSign,
    OtherRounding,
    TakenIn,
    Two,
}
