using ClassKit.Content.Diagnostics;
using ClassKit.UseCases.Dealing;
using ClassKit.UseCases.Output;
using ClassKit.UseCases.Running;
using ClassKit.Workbooks.OnPaper;

namespace ClassKit.UseCases.Papers;

/// <summary>Makes the workbook that answers on paper are typed into: a row a student, a column a part.</summary>
public static class MakePaperSheet
{
    /// <summary>The kind of folder that its file goes into.</summary>
    public const string Kind = "paper";

    /// <summary>The workbook.</summary>
    public const string FileName = "paper-answers.xlsx";

    /// <summary>What lies in a folder that dealing made, or everything that is wrong with it.</summary>
    public static Reading<PaperSheetRequest> Read(string folder)
    {
        var dealt = DealtFolder.Read(folder);
        return dealt.Succeeded ? new(new(dealt.Model), []) : new(null, dealt.Problems);
    }

    /// <summary>Takes up what was dealt.</summary>
    /// <exception cref="OperationCanceledException">The run was stopped.</exception>
    public static PaperSheetRequest Run(PaperSheetRequest request, Run run)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(run);
        run.Begin(RunStep.LayingOut);
        return request;
    }

    /// <summary>The file, made when it is written.</summary>
    public static Produced Write(PaperSheetRequest sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        return new([new(FileName, stream => stream.Write(PaperWriter.Write(sheet.Dealt, sheet.Typed.Work)))], [], []) { Open = [FileName] };
    }
}
