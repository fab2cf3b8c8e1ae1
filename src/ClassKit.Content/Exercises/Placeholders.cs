using ClassKit.Content.Diagnostics;
using ClassKit.Content.Outline;
using ClassKit.Content.Wording;
using ClassKit.Exercises.Authoring;

namespace ClassKit.Content.Exercises;

/// <summary>Reads a problem's text and the <c>{name}</c> placeholders in it.</summary>
internal static class Placeholders
{
    public static TextTemplate Read(Section opening, NameScope givens, ProblemList problems)
    {
        if (opening.Blocks.Count == 0)
        {
            problems.Add(
                opening.Line,
                "The problem has no text",
                "Tell it below the title, with `{name}` wherever a given's value belongs."
            );
            return "";
        }
        var text = TextTemplate.Parse(opening.Markdown, (name, line) => new($"{{{name}}}", name, opening.Blocks[0].Line + 1 + line));
        foreach (var unknown in text.Placeholders.Where(place => givens.IsWhole && !givens.Known.Contains(place.Name)))
            problems.Add(unknown.Line, $"`{unknown.Written}` stands for no given", NearestWord.Advice(unknown.Name, givens.Known));
        return text;
    }
}
