namespace ClassKit.Terms.Skills;

/// <summary>What one piece of work showed of one skill.</summary>
/// <param name="Skill">Which.</param>
/// <param name="On">The day.</param>
/// <param name="Shown">How many answers showed the method, 0 or more.</param>
/// <param name="Asked">How many were asked, at least as many.</param>
public sealed record ShownSkill(string Skill, DateOnly On, decimal Shown, decimal Asked);
