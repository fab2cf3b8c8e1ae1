using ClassKit.Content.Diagnostics;

namespace ClassKit.Cli.Reporting;

/// <summary>What a user can do about something, as commands and options.</summary>
internal static class RemedyWords
{
    public static string Of(Remedy remedy) =>
        remedy switch
        {
            Remedy.NameDealtFolder => "It is what `classkit deal` made.",
            Remedy.NameGradedFolder => "It is what `classkit grade` made.",
            Remedy.NameOutputFolder => "Name it with --out, such as --out graded.",
            Remedy.NameClassProfile => "Name the class profile with --class.",
            Remedy.TakeOverPoints => "Run the same again with --take-over to put them into corrections.csv.",
            Remedy.RegradeUnderOtherMarking => "`classkit regrade --marking` grades by another marking scheme.",
            Remedy.CheckContent => "`classkit check` names the line.",
            Remedy.ShowDraws => "`classkit check --draws` shows what is usual.",
            Remedy.MakePractice => "`classkit practice` makes it.",
            Remedy.NameDueMoment => "The moment is --due of `classkit grade`.",
            Remedy.NameOtherDays => "The days are --assigned and --due.",
            Remedy.DropGraded => "Run the same again with --drop if they are to be without a grade.",
        };

    /// <summary>A problem with the way out in this front's words.</summary>
    public static string Of(Diagnostic problem) => problem.Remedy is { } remedy ? $"{problem} {Of(remedy)}" : problem.ToString();
}
