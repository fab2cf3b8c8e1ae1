using System.CommandLine;
using ClassKit.Cli.Reporting;
using ClassKit.UseCases.Recording;

namespace ClassKit.Cli.Commands;

/// <summary><c>classkit write-out</c></summary>
internal static class WriteOutCommand
{
    public static Command Create(Report report)
    {
        var path = new Argument<string>("RECORD") { Description = "The file of the record, or the teaching folder that it lies in." };
        var to = CommonOptions.Out("the record's tables");
        var command = new Command(
            WriteOutRecord.Kind,
            "Write out the whole record as plain tables, from which `classkit read-back` fills an empty one."
        )
        {
            path,
            to,
        };
        command.SetAction(parsed =>
        {
            var opened = RecordPlace.Open(parsed.GetRequiredValue(path), RecordOptions.Now, mayBegin: false);
            using var record = opened.Model;
            if (record is null)
                return report.Problems(opened.Problems);
            using var look = record.Look();
            return report.Write(new(parsed.GetRequiredValue(to), WriteOutRecord.Kind, record.Path), run =>
                WriteOutRecord.Write(WriteOutRecord.Run(new(look), run))
            );
        });
        return command;
    }
}
