using ClassKit.Content.Diagnostics;
using ClassKit.Grading.Regrading;
using ClassKit.UseCases.Output.Writing;

namespace ClassKit.UseCases.Grading;

/// <summary>A folder that grading made.</summary>
internal static class GradedFolder
{
    /// <summary>What is on record there, from its grades.json.</summary>
    public static Reading<EarlierGrades> Read(string graded)
    {
        var path = Path.Combine(graded, GradesJson.FileName);
        if (OutputFolder.Settle(graded) is { } unsettled) return new(null, [unsettled]);
        return File.Exists(path)
            ? GradesJson.ReadFile(path)
            : new(null, [new(path, null, "There is no such file", "Name the folder that grading made.") { Remedy = Remedy.NameGradedFolder }]);
    }
}
