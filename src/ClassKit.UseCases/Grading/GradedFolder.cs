using ClassKit.Content.Diagnostics;
using ClassKit.Exercises.Dealing;
using ClassKit.Grading.Results;
using ClassKit.UseCases.Output.Writing;

namespace ClassKit.UseCases.Grading;

/// <summary>A folder that grading made.</summary>
public static class GradedFolder
{
    /// <summary>True if a folder holds a record of grades, readable or not.</summary>
    public static bool HasRecord(string graded) => File.Exists(Path.Combine(graded, GradesJson.FileName));

    /// <summary>What is on record there, from its grades.json.</summary>
    /// <param name="graded">The folder.</param>
    /// <param name="dealt">What was dealt to whom: grades of another deal are refused. Null where any deal's will do.</param>
    public static Reading<ClassGrades> Read(string graded, DealtClass? dealt)
    {
        ArgumentNullException.ThrowIfNull(graded);
        var path = Path.Combine(graded, GradesJson.FileName);
        if (OutputFolder.Settle(graded) is { } unsettled)
            return new(null, [unsettled]);
        if (!File.Exists(path))
            return new(
                null,
                [new(path, null, "There is no such file", "Name the folder that grading made.") { Remedy = Remedy.NameGradedFolder }]
            );
        var grades = GradesJson.ReadFile(path, dealt);
        return grades.Model?.Dealt.Identity is { } other && dealt?.Identity is { } own && other != own
            ? new(
                null,
                [
                    new(
                        path,
                        null,
                        $"These are grades of deal {other.Code}, and what was dealt is deal {own.Code}",
                        "Name the folder of grades that was made of this deal."
                    )
                    {
                        Remedy = Remedy.NameGradedFolder,
                    },
                ]
            )
            : grades;
    }
}
