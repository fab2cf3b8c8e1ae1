using ClassKit.Content.Diagnostics;
using ClassKit.Content.Outline;
using ClassKit.Lessons.Authored;

namespace ClassKit.Content.Lessons;

/// <summary>Reads discussion questions: each a heading with three <c>#</c>, the model answer below.</summary>
internal static class Questions
{
    public static IReadOnlyList<Question> Read(Section? section, LessonTexts texts, ProblemList problems)
    {
        if (section is null)
            return [];
        var (opening, parts) = section.Split(3);
        if (opening.Blocks.Count > 0)
            problems.Add(
                opening.Blocks[0].Line + 1,
                "This text belongs to no question",
                "Begin every question with `### ` and write its model answer below."
            );
        foreach (var unanswered in parts.Where(part => part.Blocks.Count == 0))
            problems.Add(unanswered.Line, $"The question `{unanswered.Heading.Text}` has no model answer", "Write it below the question.");
        return [.. parts.Select(part => new Question(texts.Read(part.Heading), texts.Read(part)))];
    }
}
