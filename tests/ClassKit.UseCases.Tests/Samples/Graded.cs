using ClassKit.Grading.Results;
using ClassKit.UseCases.Grading;
using ClassKit.UseCases.Intake;
using ClassKit.UseCases.Running;

namespace ClassKit.UseCases.Tests.Samples;

/// <summary>What a folder or archive comes to for the small class.</summary>
internal static class Graded
{
    public static ClassGrades Of(string returned)
    {
        var files = ReturnedFiles.At(returned);
        Assert.Empty(files.Problems);
        return GradeClass.Run(new(SmallClass.Dealt, files.Model!), Run.Unwatched).Grades;
    }
}
