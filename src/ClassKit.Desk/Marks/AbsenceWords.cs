using ClassKit.Terms.Rules;

namespace ClassKit.Desk.Marks;

/// <summary>What an absence comes to, wherever somebody is said to have been absent.</summary>
internal static class AbsenceWords
{
    public static string Of(AbsenceRule rule) =>
        rule switch
        {
            AbsenceRule.Zero => "It counts as nothing earned, 0 %, as the rule of this term has it.",
            AbsenceRule.LeftOut => "It is left out like excused work, as the rule of this term has it.",
        };
}
