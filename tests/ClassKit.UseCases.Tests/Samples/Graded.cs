using ClassKit.Grading;

namespace ClassKit.UseCases.Tests.Samples;

/// <summary>What a folder or archive comes to for the small class.</summary>
internal static class Graded
{
    public static ClassGrades Of(string returned)
    {
        var (files, problem) = ReturnedFiles.At(returned);
        Assert.Null(problem);
        var grader = new ClassGrader(SmallClass.Dealt);
        return grader.Settle(ParallelJudging.Judge(grader, files!.Read()));
    }
}
