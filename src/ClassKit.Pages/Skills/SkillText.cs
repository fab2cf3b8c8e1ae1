using System.Globalization;
using ClassKit.Terms.Skills;

namespace ClassKit.Pages.Skills;

/// <summary>What somebody can do of a skill, in words.</summary>
internal static class SkillText
{
    /// <summary>The band: “40–70 %”.</summary>
    public static string Band(SkillBand band) => $"{NumberText.Share(band.Low)} to {NumberText.Share(band.High)}";

    /// <summary>Since when it was not shown.</summary>
    public static string Unshown(SkillStanding skill, DateOnly on) =>
        skill.DaysUnshown(on) switch
        {
            null => "not shown yet",
            0 => "shown on this day",
            { } days => $"shown {Phrases.Count(days, "day")} ago",
        };

    /// <summary>A day as people write it.</summary>
    public static string Day(DateOnly day) => day.ToString("d MMMM yyyy", CultureInfo.InvariantCulture);

    /// <summary>A skill at the head of a section.</summary>
    public static string Title(string skill) => skill.Length == 0 ? skill : char.ToUpperInvariant(skill[0]) + skill[1..];
}
