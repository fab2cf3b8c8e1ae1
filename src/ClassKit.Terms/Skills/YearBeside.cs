namespace ClassKit.Terms.Skills;

/// <summary>What classes of two years showed of one exercise, each answer counting once.</summary>
/// <param name="Skill">What it practises.</param>
/// <param name="Exercise">Its title.</param>
/// <param name="Then">The earlier year.</param>
/// <param name="Now">This year.</param>
public sealed record YearBeside(string Skill, string Exercise, SkillBand Then, SkillBand Now)
{
    /// <summary>
    /// True if the bands of the two years have nothing in common. Answers of one student hang together, so that bands of a class are rather
    /// too narrow than too wide.
    /// </summary>
    public bool IsOther => Then.High < Now.Low || Now.High < Then.Low;

    /// <summary>Exercises that both years were asked, what was hardest in the earlier year first.</summary>
    /// <param name="then">How many answers of the earlier year showed the method, by exercise and its title.</param>
    /// <param name="now">The same of this year.</param>
    public static IReadOnlyList<YearBeside> Of(
        IEnumerable<(string Exercise, string Title, ShownSkill Shown)> then,
        IEnumerable<(string Exercise, string Title, ShownSkill Shown)> now
    )
    {
        var before = then.ToLookup(one => one.Exercise);
        return
        [
            .. now.GroupBy(one => one.Exercise)
                .Where(exercise => before.Contains(exercise.Key))
                .Select(exercise => new YearBeside(
                    exercise.First().Shown.Skill,
                    exercise.First().Title,
                    Band(before[exercise.Key]),
                    Band(exercise)
                ))
                .OrderBy(year => year.Then.Middle)
                .ThenBy(year => year.Exercise, StringComparer.Ordinal),
        ];
    }

    private static SkillBand Band(IEnumerable<(string, string, ShownSkill Shown)> answers)
    {
        var all = answers.Select(one => one.Shown).ToList();
        return SkillBand.Of((double)all.Sum(one => one.Shown), (double)all.Sum(one => one.Asked - one.Shown));
    }
}
