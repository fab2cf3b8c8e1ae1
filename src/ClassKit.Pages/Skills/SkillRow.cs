using ClassKit.Terms.Skills;

namespace ClassKit.Pages.Skills;

/// <summary>One band with what stands beside it.</summary>
/// <param name="Label">Whose, or of what.</param>
/// <param name="Standing">The band.</param>
public sealed record SkillRow(string Label, SkillStanding Standing);
