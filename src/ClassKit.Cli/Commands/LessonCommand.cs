using System.CommandLine;
using ClassKit.Cli.Reporting;
using ClassKit.UseCases.Output;
using ClassKit.UseCases.Running;

namespace ClassKit.Cli.Commands;

/// <summary>A command that makes a folder of a lesson for a class.</summary>
internal static class LessonCommand
{
    /// <summary>The class profile, which may be left out.</summary>
    /// <param name="holds">What the command takes of it.</param>
    public static Option<string?> Profile(string holds) =>
        new("--class") { Description = $"The class profile: {holds}. A class of 24 in 6 teams if left out.", HelpName = "FILE" };

    /// <summary>The command.</summary>
    /// <param name="kind">Its name and the kind of its folder.</param>
    /// <param name="does">What it does.</param>
    /// <param name="made">What it writes.</param>
    /// <param name="profile">See <see cref="Profile"/>.</param>
    /// <param name="report">What is told.</param>
    /// <param name="make">Makes it of a lesson's folder and a class profile, null where none is named.</param>
    public static Command Of(
        string kind,
        string does,
        string made,
        Option<string?> profile,
        Report report,
        Func<string, string?, Run, Produced> make
    )
    {
        var (lesson, to) = (CommonOptions.Lesson(), CommonOptions.Out(made));
        var command = new Command(kind, does) { lesson, to, profile };
        command.SetAction(parsed =>
        {
            var (folder, classFile) = (parsed.GetRequiredValue(lesson), parsed.GetValue(profile));
            return report.Write(new(parsed.GetRequiredValue(to), kind, [.. LessonInputs.Of(folder), classFile]), run =>
                make(folder, classFile, run)
            );
        });
        return command;
    }
}
