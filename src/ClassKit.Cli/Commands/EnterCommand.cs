using System.CommandLine;
using ClassKit.Cli.Reporting;
using ClassKit.Content.Sources;
using ClassKit.Records.Storage;
using ClassKit.UseCases.Output;
using ClassKit.UseCases.Recording;
using ClassKit.UseCases.Running;

namespace ClassKit.Cli.Commands;

/// <summary><c>classkit enter</c></summary>
internal sealed class EnterCommand
{
    private readonly Argument<string> _what = new("WHAT")
    {
        Description =
            "The folder that `classkit grade` made, the description of a term such as term.md, or the folder of a lesson that was given.",
    };
    private readonly Option<string?> _dealt = new("--dealt")
    {
        Description = "For grades: the folder that `classkit deal` made.",
        HelpName = "DIR",
    };
    private readonly Option<string?> _class = new("--class")
    {
        Description = "What the class is called, where neither deal nor term says it.",
        HelpName = "NAME",
    };
    private readonly Option<DateOnly?> _on = CommonOptions.Day("--on", "For a lesson: the day on which it was given; today if left out.");

    public static Command Create(Report report) => new EnterCommand().Made(report);

    private Command Made(Report report)
    {
        var (path, by, why) = (RecordOptions.Record(), RecordOptions.By(), RecordOptions.Why());
        var command = new Command(
            EnterGrades.Kind,
            "Put on record the grades of a class with what was dealt, a term with its works and marks, or that a lesson was given."
        )
        {
            _what,
            _dealt,
            _class,
            _on,
            path,
            by,
            why,
        };
        command.Validators.Add(result =>
        {
            if (result.GetValue(_what) is not { } what || !Directory.Exists(what))
                return;
            if (IsLesson(what) && result.GetValue(_class) is null)
                result.AddError("Name the class that was given the lesson with --class, such as --class \"Bakers 1\".");
            if (!IsLesson(what) && result.GetValue(_dealt) is null)
                result.AddError("Name what was dealt with --dealt, such as --dealt my-deal.");
        });
        command.SetAction(parsed =>
            report.Done(run =>
            {
                var author = RecordOptions.Author(parsed, by, why);
                return Produced.Within(RecordPlace.Open(parsed.GetRequiredValue(path), author.Now, mayBegin: true), record =>
                    Enter(record, author, parsed, run)
                );
            })
        );
        return command;
    }

    private Produced Enter(TeachingRecord record, Author author, ParseResult parsed, Run run)
    {
        var (what, called) = (parsed.GetRequiredValue(_what), parsed.GetValue(_class));
        if (IsLesson(what))
            return Produced.Of(
                EnterLesson.Run(new(record, author, called!, Library.OfPaths().At(what), parsed.GetValue(_on)), run),
                EnterLesson.Write
            );
        return parsed.GetValue(_dealt) is { } deal
            ? Produced.Of(EnterGrades.Read(what, deal), grades =>
                Produced.Of(EnterGrades.Run(new(record, author, called, grades), run), EnterGrades.Write)
            )
            : Produced.Of(EnterTerm.Read(what, (plan, deals) => new(record, author, called, plan, deals)), request =>
                Produced.Of(EnterTerm.Run(request, run), EnterTerm.Write)
            );
    }

    private static bool IsLesson(string folder) => File.Exists(Path.Combine(folder, "lesson.md"));
}
