using ClassKit.Exercises.Authoring;

namespace ClassKit.Grading.Results;

/// <summary>What the judge does that not every version of it did, so that a class is judged again by the rules it was judged by.</summary>
/// <remarks>
/// Here alone a version becomes rules; everybody else asks for the rule. A change after which some answer may be judged otherwise raises
/// <see cref="JudgeRecord.CurrentVersion"/> and has a rule here, or it reaches into gradings of before.
/// </remarks>
internal sealed record JudgeRules
{
    private JudgeRules() { }

    /// <summary>Those of this program.</summary>
    public static JudgeRules Current { get; } = Of(JudgeRecord.CurrentVersion);

    /// <summary>From version 3: what an answer is, that nothing listed explains, is looked for among the wrong formulas near the key.</summary>
    public required bool NearMisses { get; init; }

    /// <summary>From version 3: what follows from own earlier answers is held to a tolerance in proportion to them.</summary>
    public required bool InProportion { get; init; }

    /// <summary>
    /// From version 4: a formula that can be written over the exercise's names is held against near misses on all inputs of the class, and
    /// not on those alone that the workbook was tried with, so that one formula is told alike to everybody.
    /// </summary>
    public required bool OnAllInputs { get; init; }

    /// <summary>From version 4: what slips before a power is among the near misses.</summary>
    public required bool Powers { get; init; }

    /// <summary>
    /// From version 5: two wrong ways that come to the same only while earlier answers are right are two. A typed number that both give is
    /// not named, and a formula is named after the one that it is, and after none where it does not have the cell that it is said to have.
    /// </summary>
    public required bool Apart { get; init; }

    /// <summary>
    /// From version 6: what a formula rounds is read in the formula, so that one formula has one outcome and one mark whatever numbers a
    /// student was dealt; a typed number comes of a rounded earlier answer if it is that to its digits; and givens are typed in if they
    /// stand there.
    /// </summary>
    public required bool ReadsRounding { get; init; }

    /// <summary>
    /// From version 6: a formula that is a near miss to the last digit is no listed wrong turn that it only comes near to.
    /// </summary>
    public required bool ExactFirst { get; init; }

    /// <summary>
    /// From version 7: a formula that is right where the earlier answers that it points to are right carries their slip on, also where the
    /// key goes another way and does not name them.
    /// </summary>
    public required bool OtherWays { get; init; }

    /// <summary>
    /// From version 7: a typed number that is to the last digit what the key makes of own earlier answers follows through, whatever else on
    /// the sheet is the same number by the luck of the draw; and what is within the tolerance of those is not rounded too far.
    /// </summary>
    public required bool CarriesExactly { get; init; }

    /// <summary>
    /// From version 7: where the key rounds, an answer that is not rounded is not right because it lies near, and the key but for its
    /// rounding is one slip whatever numbers a student was dealt.
    /// </summary>
    public required bool AsksRounded { get; init; }

    /// <summary>
    /// From version 7: a near miss has something of the method. A cell pointed at has none, unless the key does one thing with it, and
    /// what is itself worked out in two steps is not left out by one.
    /// </summary>
    public required bool OfTheMethod { get; init; }

    /// <summary>
    /// From version 8: one letter among words is left to the instructor instead of counting for nothing, and a letter of another alphabet
    /// that looks like the one asked for is that one.
    /// </summary>
    public required bool ReadsChoices { get; init; }

    /// <summary>How exact an answer to a part must be.</summary>
    public Tolerance ToleranceOf(Part part) => AsksRounded ? part.Exactness : part.Tolerance;

    /// <summary>The rules of a version.</summary>
    /// <param name="version">From <see cref="JudgeRecord.EarliestKept"/> to <see cref="JudgeRecord.CurrentVersion"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">We do not have that version's rules.</exception>
    public static JudgeRules Of(int version)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(version, JudgeRecord.EarliestKept);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(version, JudgeRecord.CurrentVersion);
        return new()
        {
            NearMisses = version >= 3,
            InProportion = version >= 3,
            OnAllInputs = version >= 4,
            Powers = version >= 4,
            Apart = version >= 5,
            ReadsRounding = version >= 6,
            ExactFirst = version >= 6,
            OtherWays = version >= 7,
            CarriesExactly = version >= 7,
            AsksRounded = version >= 7,
            OfTheMethod = version >= 7,
            ReadsChoices = version >= 8,
        };
    }
}
