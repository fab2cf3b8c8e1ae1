using ClassKit.Content.Diagnostics;
using ClassKit.Content.Sources;

namespace ClassKit.Content.Learning;

/// <summary>Puts misconceptions into the text of an exercise, and leaves every other character as it is.</summary>
public static class ExerciseText
{
    /// <summary>The text with them, each behind all that its part has, or why they do not fit.</summary>
    /// <param name="exercise">The exercise's file.</param>
    /// <param name="proposed">What comes into it.</param>
    public static Reading<string> With(Source exercise, IReadOnlyList<ProposedMisconception> proposed)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        ArgumentNullException.ThrowIfNull(proposed);
        var problems = new ProblemList(exercise.Shown);
        if (SourceFile.Read(exercise, problems) is not { } text)
            return problems.Fail<string>();
        var lines = text.ReplaceLineEndings("\n").Split('\n').ToList();
        foreach (var piece in proposed)
        {
            var begin = lines.FindIndex(line => line.TrimEnd() == $"## Part: {piece.Part}");
            if (begin < 0)
            {
                problems.Add(
                    null,
                    $"There is no part `{piece.Part}`, which line {piece.Line} of the proposals speaks of",
                    "Name one of the exercise's own parts behind its id."
                );
                continue;
            }
            var end = lines.FindIndex(begin + 1, line => line.StartsWith("## ", StringComparison.Ordinal));
            if (end < 0)
                end = lines.Count;
            while (end > begin && lines[end - 1].Trim().Length == 0)
                end--;
            lines.InsertRange(end, ["", .. piece.Markdown.Split('\n')]);
        }
        return problems.Finish(() => string.Join('\n', lines));
    }
}
