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
        var write = new Option<bool>("--write") { Description = "Erase; without it you are only told what it would come to." };
        var command = new Command(EraseStudent.Kind, "Take a student out of the record; the class's statistics stay without saying whose they were.") { student, path, by, why, write };
        command.SetAction(parsed =>
        {
            return parsed.GetValue(write) ? report.Done(Make) : report.Only(Make, "Nothing was erased yet; add --write to do it. There is no way back.");

            Produced Make(Run run)
            {
                var author = RecordOptions.Author(parsed, by, why);
                return Produced.Within(RecordPlace.Open(parsed.GetRequiredValue(path), author.Now, mayBegin: false), record => Produced.Of(
                    EraseStudent.Run(new(record, author, parsed.GetRequiredValue(student), parsed.GetValue(write)), run),
                    done => EraseStudent.Write(done, Path.GetDirectoryName(Path.GetFullPath(record.Path)) is { } folder ? FilesNaming.In(folder, done.Erased.Student).Below(folder) : null)));
            }
        });
        return command;
    }
}
