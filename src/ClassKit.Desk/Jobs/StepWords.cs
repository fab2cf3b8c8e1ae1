using System.Globalization;
using ClassKit.UseCases.Running;

namespace ClassKit.Desk.Jobs;

/// <summary>What a job is at, in the desk's words.</summary>
internal static class StepWords
{
    /// <summary>What is being done.</summary>
    public static string Of(RunStep step) =>
        step switch
        {
            RunStep.ReadingContent => "Reading what you wrote",
            RunStep.ProvingExercises => "Trying the exercises out",
            RunStep.PlanningBenches => "Planning the benches",
            RunStep.DrawingVariants => "Drawing everybody’s numbers",
            RunStep.Reckoning => "Working it out",
            RunStep.Recomputing => "Computing formulas anew",
            RunStep.Tabulating => "Putting grades into tables",
            RunStep.Weighing => "Weighing marks",
            RunStep.FillingIn => "Filling in workbooks",
            RunStep.Judging => "Judging what came back",
            RunStep.Recording => "Writing in the record",
            RunStep.LayingOut => "Laying out what to mark on",
            RunStep.MakingFiles => "Making the files",
        };

    /// <summary>The same with how far it is.</summary>
    public static string Of(RunProgress progress) =>
        progress.Total is { } total
            ? string.Create(CultureInfo.InvariantCulture, $"{Of(progress.Step)}: {progress.Done} of {total}")
            : Of(progress.Step);
}
