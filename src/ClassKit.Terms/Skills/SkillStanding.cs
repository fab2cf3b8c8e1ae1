namespace ClassKit.Terms.Skills;

/// <summary>What somebody can do of one skill by all their work, on a day.</summary>
/// <param name="Skill">Which.</param>
/// <param name="Band">How sure it is.</param>
/// <param name="LastAsked">The day on which it was asked last.</param>
/// <param name="LastShown">The day on which at least one answer showed the method; null if none did.</param>
public sealed record SkillStanding(string Skill, SkillBand Band, DateOnly LastAsked, DateOnly? LastShown)
{
    /// <summary>
    /// Days after which an answer counts half. Common practice, no source: a lesson a week, so that the last month weighs as much as all
    /// before.
    /// </summary>
    public const double HalfLife = 30;

    /// <summary>Days since the skill was shown last; null if it never was.</summary>
    public int? DaysUnshown(DateOnly today) => LastShown is { } last ? today.DayNumber - last.DayNumber : null;

    /// <summary>
    /// Every skill that was asked, by name. Work after the day is passed over, so that a look back shows what was known then.
    /// </summary>
    /// <param name="work">All work of one person.</param>
    /// <param name="today">The day.</param>
    public static IReadOnlyList<SkillStanding> Of(IEnumerable<ShownSkill> work, DateOnly today)
    {
        ArgumentNullException.ThrowIfNull(work);
        return
        [
            .. work.Where(one => one.On <= today && one.Asked > 0)
                .GroupBy(one => one.Skill, StringComparer.Ordinal)
                .OrderBy(skill => skill.Key, StringComparer.Ordinal)
                .Select(skill => Of(skill.Key, [.. skill], today)),
        ];
    }

    private static SkillStanding Of(string skill, IReadOnlyList<ShownSkill> work, DateOnly today)
    {
        double Counted(Func<ShownSkill, decimal> of) =>
            work.Sum(one => (double)of(one) * Math.Pow(0.5, (today.DayNumber - one.On.DayNumber) / HalfLife));
        var shown = work.Where(one => one.Shown > 0).Select(one => (DateOnly?)one.On).Max();
        return new(skill, SkillBand.Of(Counted(one => one.Shown), Counted(one => one.Asked - one.Shown)), work.Max(one => one.On), shown);
    }
}
