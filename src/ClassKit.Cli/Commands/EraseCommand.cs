using System.CommandLine;
using ClassKit.Cli.Reporting;
using ClassKit.UseCases.Output;
using ClassKit.UseCases.Recording;
using ClassKit.UseCases.Running;

namespace ClassKit.Cli.Commands;

/// <summary><c>classkit erase</c></summary>
internal static class EraseCommand
{
    public static Command Create(Report report)
    {
        var student = new Argument<string>("STUDENT") { Description = "The student's id on the roster." };
        var (path, by, why) = (RecordOptions.Record(), RecordOptions.By(), RecordOptions.Why());
        var files = new Option<bool>("--files")
        {
            Description =
                "Also take the student out of the files of the teaching folder: theirs alone are deleted, their rows in tables taken out, what lists the class made anew.",
        };
        var write = new Option<bool>("--write") { Description = "Erase; without it you are only told what it would come to." };
        var command = new Command(
            EraseStudent.Kind,
            "Take a student out of the record, and with --files out of the teaching folder; the class's statistics stay without saying whose they were."
        )
        {
            student,
            path,
            by,
            why,
            files,
            write,
        };
        command.SetAction(parsed =>
        {
            var withFiles = parsed.GetValue(files);
            return parsed.GetValue(write)
                ? report.Done(Make)
                : report.Only(
                    Make,
                    $"Nothing was erased yet; add --write to do it{(withFiles ? "" : ", and --files to have the files done, too")}. There is no way back."
                );

            Produced Make(Run run) =>
                Produced.Within(
                    EraseRequest.At(
                        parsed.GetRequiredValue(path),
                        RecordOptions.Author(parsed, by, why),
                        parsed.GetRequiredValue(student),
                        parsed.GetValue(write),
                        withFiles
                    ),
                    request => Produced.Of(EraseStudent.Run(request, run), EraseStudent.Write)
                );
        });
        return command;
    }
}
