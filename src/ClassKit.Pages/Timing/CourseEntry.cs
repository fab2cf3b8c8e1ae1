namespace ClassKit.Pages.Timing;

/// <summary>One line of the instructor's timing.</summary>
/// <param name="From">The minute it begins, since the beginning of the class; null without a bench plan.</param>
/// <param name="Until">The minute it ends; null without a bench plan.</param>
/// <param name="Heading">In a few words: <c>Batter buns: Mix</c>.</param>
/// <param name="What">What happens.</param>
/// <param name="Say">What to say meanwhile; may be empty.</param>
internal sealed record CourseEntry(int? From, int? Until, string Heading, string What, string Say);
