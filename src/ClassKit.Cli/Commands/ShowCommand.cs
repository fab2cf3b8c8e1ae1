using System.CommandLine;
using ClassKit.Cli.Reporting;
using ClassKit.UseCases.Output;
using ClassKit.UseCases.Recording;

namespace ClassKit.Cli.Commands;

/// <summary><c>classkit show</c></summary>
internal static class ShowCommand
{
    public static Command Create(Report report)
    {
        var student = new Argument<string>("STUDENT") { Description = "The student's id on the roster." };
        var path = RecordOptions.Record();
        var to = CommonOptions.Out("all that the record holds of the student, as tables");
        var command = new Command(ShowStudent.Kind, "Show all that the record holds of one student.") { student, path, to };
        command.SetAction(parsed =>
            report.Write(new(parsed.GetRequiredValue(to), ShowStudent.Kind, RecordPlace.Of(parsed.GetRequiredValue(path))), run =>
                Produced.Within(RecordPlace.Open(parsed.GetRequiredValue(path), RecordOptions.Now, mayBegin: false), record =>
                    Produced.Of(ShowStudent.Run(new(record, parsed.GetRequiredValue(student)), run), ShowStudent.Write)
                )
            )
        );
        return command;
    }
}
