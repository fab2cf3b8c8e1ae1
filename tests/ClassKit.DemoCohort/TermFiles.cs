using ClassKit.Exercises.Dealing;
using ClassKit.UseCases.Dealing;
using ClassKit.UseCases.Rehearsing;
using ClassKit.UseCases.Running;
using ClassKit.UseCases.Touring;
using ClassKit.Workbooks.Dealing;
using ClassKit.Workbooks.Filling;

namespace ClassKit.DemoCohort;

/// <summary>
/// Makes what the demo class brought back in its term: the second set in workbooks and on paper, a resit, and what its teams measured.
/// </summary>
public static class TermFiles
{
    private const string Paper = "on-paper/paper-answers.xlsx";

    /// <summary>Who worked on paper, for want of a computer on that day.</summary>
    private static readonly string[] OnPaper = ["hana-sato", "noor-rahman"];

    /// <summary>Who was away.</summary>
    private static readonly string[] Away = ["rosa-whitehorse"];

    /// <summary>Makes the files anew below <c>demo-cohort/term</c>.</summary>
    public static void Remake(DemoMaterial demo)
    {
        ArgumentNullException.ThrowIfNull(demo);
        foreach (var folder in new[] { "returned", "returned-resit", "observed", "on-paper" })
        {
            var path = Path.Combine(demo.TermFolder, folder);
            if (Directory.Exists(path))
                Directory.Delete(path, recursive: true);
            Directory.CreateDirectory(path);
        }
        foreach (var (path, content) in Of(demo))
            File.WriteAllBytes(Path.Combine(demo.TermFolder, path), content);
    }

    /// <summary>Every file by its path below the term's folder.</summary>
    public static IReadOnlyDictionary<string, byte[]> Of(DemoMaterial demo)
    {
        ArgumentNullException.ThrowIfNull(demo);
        var tour = demo.Read().Model ?? throw new InvalidOperationException("The demo material cannot be read.");
        var term = tour.Term!;
        var dealt = DealPractice.Run(term.ToDeal(tour.Roster, tour.Seed), Run.Unwatched).Model!.Dealt;
        var again = DealPractice.Run(term.ToDealAgain(tour.Roster, tour.Seed, dealt), Run.Unwatched).Model!.Dealt;
        var files = new Dictionary<string, byte[]> { [Paper] = PaperAnswers.Of(dealt, OnPaper) };
        foreach (var seat in dealt.Students.Where(seat => !OnPaper.Contains(seat.Who.Id) && !Away.Contains(seat.Who.Id)))
            files[$"returned/{seat.Who.Id}.xlsx"] = Filled(dealt, seat, "second set");
        foreach (var seat in again.Students)
            files[$"returned-resit/{seat.Who.Id}.xlsx"] = Filled(again, seat, "resit");
        foreach (var (name, content) in TeamsMeasured.Of(tour.Pack))
            files["observed/" + name] = content;
        return files;
    }

    private static byte[] Filled(DealtClass dealt, DealtStudent seat, string when) =>
        WorkbookFiller.Fill(DealtWorkbookWriter.Write(dealt, seat), Returning.Edits(dealt.LayOut(), TermAnswers.Of(dealt, seat, when)));
}
