using System.Text;
using ClassKit.CellFormulas.Sheets;
using ClassKit.Content.Classes;
using ClassKit.Content.Lessons;
using ClassKit.Content.Rosters;
using ClassKit.Exercises.Dealing;
using ClassKit.Exercises.Layout;
using ClassKit.UseCases.Rehearsing;
using ClassKit.UseCases.Touring;
using ClassKit.Workbooks.Dealing;
using ClassKit.Workbooks.Filling;

namespace ClassKit.DemoCohort;

/// <summary>Makes the files that the demo class returned.</summary>
public static class ReturnedFiles
{
    /// <summary>Empties <c>demo-cohort/returned</c> and fills it again.</summary>
    public static void Remake(DemoMaterial demo)
    {
        ArgumentNullException.ThrowIfNull(demo);
        var dealt = Deal(demo);
        if (Directory.Exists(demo.Returned))
            Directory.Delete(demo.Returned, recursive: true);
        Directory.CreateDirectory(demo.Returned);

        foreach (var student in DemoClass.Students)
        {
            if (student.File is null)
                continue;
            var seat = dealt.Students.Single(other => other.Who.Id == student.Id);
            File.WriteAllBytes(Path.Combine(demo.Returned, student.File), Make(dealt, seat, student));
        }
    }

    private static DealtClass Deal(DemoMaterial demo)
    {
        var lesson = LessonReader.Read(demo.Lesson);
        var roster = RosterReader.Read(demo.Roster, ClassProfileReader.Read(demo.Class).Model?.Name);
        if (!lesson.Succeeded || !roster.Succeeded)
            throw new InvalidOperationException(string.Join('\n', lesson.Problems.Concat(roster.Problems)));
        return Dealer
            .Deal(lesson.Model.Id, lesson.Model.Title, lesson.Model.Exercises, lesson.Model.Marking, roster.Model, DemoMaterial.Seed)
            .Class!;
    }

    private static byte[] Make(DealtClass dealt, DealtStudent seat, DemoStudent student)
    {
        if (student.Mishap == Mishap.NoWorkbook)
            return Encoding.UTF8.GetBytes("Sorry, I only have my notes on the phone. I will send the table tonight.\n");
        var filled = WorkbookFiller.Fill(
            DealtWorkbookWriter.Write(dealt, seat),
            [.. Returning.Edits(dealt.LayOut(), DemoClass.Answers(dealt, student)), .. Edits(dealt.LayOut(), student.Mishap)]
        );
        var saved = Resaving.Save(filled, student.Through);
        return student.Mishap == Mishap.Truncated ? saved[..(saved.Length / 2)] : saved;
    }

    private static IEnumerable<WorkbookEdit> Edits(PracticeLayout layout, Mishap mishap)
    {
        CellAddress Answer(string exercise, string part) => layout.Of(exercise).Answers.Single(place => place.Part.Id == part).Address;
        switch (mishap)
        {
            case Mishap.PicturePasted:
                yield return new PastePicture(Answer("scaling", "egg") with { Column = PracticeColumns.Usual.Note });
                break;
            case Mishap.RowInserted:
                var below = Answer("scaling", "flour");
                yield return new InsertRow(below.Sheet, below.Row);
                break;
            case Mishap.GivenOverwritten:
                yield return new EnterNumber(layout.Of("hydration").Givens.Single(place => place.Given.Id == "flour").Address, 1234);
                break;
            case Mishap.None or Mishap.Truncated or Mishap.NoWorkbook:
                break;
        }
    }
}
