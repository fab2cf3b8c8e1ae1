using System.IO.Compression;
using ClassKit.Exercises.Cohorts;
using ClassKit.Exercises.Dealing;
using ClassKit.Grading.Findings.Refusals;
using ClassKit.Notes;
using ClassKit.UseCases.Tests.Hostile;
using ClassKit.UseCases.Tests.Samples;
using ClassKit.Workbooks.Dealing;
using ClassKit.Workbooks.Returned;

namespace ClassKit.UseCases.Tests.Grading;

/// <summary>What we make ourselves is as large as the class that it is about, and is never measured by what a stranger's file may hold.</summary>
public sealed class LargeClassTests
{
    /// <summary>Students that each show a long formula at every part, so that few of them fill a gradebook as a thousand would.</summary>
    private const int Students = 260;

    [Fact]
    public void A_class_whose_gradebook_is_larger_than_any_file_of_strangers_is_graded_and_its_totals_stored()
    {
        using var folder = new TemporaryFolder();
        var roster = new Roster("Large class", [.. Enumerable.Range(0, Students).Select(at => new Student($"s{at}", $"Student {at}"))]);
        var dealt = Dealer.Deal("lesson", "Lesson", SmallClass.Dealt.Exercises, SmallClass.Dealt.Marking, roster, 3).Class!;
        foreach (var student in dealt.Students) folder.Write($"{student.Who.Id}.xlsx", Answered(dealt, student));

        var produced = GradeCommands.Grade(dealt, folder.Path);
        var gradebook = produced.Files.Single(file => file.Path == "gradebook.xlsx").Content;

        Assert.IsType<Refusal.TooLarge>(ReturnedWorkbookReader.Read(gradebook).Refusal);
        Assert.Equal((Students, Students), (Assert.IsType<Note.Graded>(produced.Notes[0]).WithGrade, ((Note.Graded)produced.Notes[0]).Students));
        var points = Parts.Of(gradebook).Text("xl/worksheets/sheet1.xml");
        Assert.Equal(points.Split("</x:f>").Length, points.Split("</x:f><x:v>").Length);
    }

    /// <summary>A dealt workbook with a long formula of its own at every part.</summary>
    private static byte[] Answered(DealtClass dealt, DealtStudent student)
    {
        var parts = Parts.Of(DealtWorkbookWriter.Write(dealt, student));
        foreach (var sheet in dealt.AnswersOf(student).GroupBy(answer => answer.Address.Sheet).Select((answers, at) => (Part: $"xl/worksheets/sheet{at + 2}.xml", Cells: answers.Select(answer => answer.Address.Cell))))
        {
            parts = parts.Change(sheet.Part, xml => sheet.Cells.Aggregate(xml, (text, cell) =>
                CellXml.Put(text, cell, $"><x:f>1+0*LEN(\"{student.Who.Id} {cell} {new string('x', 8_000)}\")</x:f><x:v>1</x:v>", "x:")));
        }

        return parts.Pack(CompressionLevel.Fastest);
    }
}
