using ClassKit.Content.Classes;
using ClassKit.Content.Diagnostics;
using ClassKit.Exercises.Deadlines;
using ClassKit.Exercises.Dealing;
using ClassKit.Grading.OnPaper;
using ClassKit.Grading.Results;
using ClassKit.UseCases.Dealing;
using ClassKit.UseCases.Intake;
using ClassKit.UseCases.Output;
using ClassKit.UseCases.Papers;
using ClassKit.Wording.Gradebooks;

namespace ClassKit.UseCases.Grading;

/// <summary>Where what grading takes lies on disk.</summary>
/// <param name="Dealt">A folder that dealing made.</param>
/// <param name="Returned">A folder or a zip; null where nothing came back but paper.</param>
public sealed record GradePaths(string Dealt, string? Returned)
{
    /// <summary>A workbook of answers on paper; null for none.</summary>
    public string? Paper { get; init; }

    /// <summary>The instructor's table of corrections; null for the one that lies in <see cref="Graded"/>, if there is one.</summary>
    public string? Corrections { get; init; }

    /// <summary>When the work was due, as the instructor says; null for what is on record, or was dealt.</summary>
    public DueWish? Due { get; init; }

    /// <summary>The class profile, for its time zone; null for the zone that the deal knows.</summary>
    public string? ClassFile { get; init; }

    /// <summary>
    /// The folder of grades, which may be new: what is on record there and what was typed into its gradebook is read; null for none.
    /// </summary>
    public string? Graded { get; init; }

    /// <summary>
    /// A folder of earlier grades to judge like, on the same fresh inputs; null for the record in <see cref="Graded"/>, if there is one.
    /// </summary>
    public string? Earlier { get; init; }

    /// <summary>False where reports bear no names: points typed into a gradebook with names are not read then.</summary>
    public bool ReadsGradebook { get; init; } = true;

    /// <summary>True to let points typed into the gradebook count as corrections.</summary>
    public bool TakeOver { get; init; }

    /// <summary>
    /// True where whoever was graded in <see cref="Graded"/> may be without a grade now: what is named is all that came back, as a desk's
    /// folder of a round is. False where it may be one batch of it, which must not take away the grades of the others.
    /// </summary>
    public bool MayDrop { get; init; } = true;

    private string? Table => Corrections ?? (Graded is null ? null : CorrectionsIn(Graded));

    /// <summary>All that grading takes, or everything that is wrong with it.</summary>
    public Reading<GradeRequest> Read()
    {
        var dealt = DealtFolder.Read(Dealt);
        return dealt.Succeeded ? Read(dealt.Model) : new(null, dealt.Problems);
    }

    /// <summary>The same for a deal that is at hand, with what is on record of it.</summary>
    internal Reading<GradeRequest> Read(DealtClass dealt)
    {
        if (Earlier is not null)
        {
            var named = GradedFolder.Read(Earlier, dealt);
            return named.Succeeded ? Read(dealt, named.Model, []) : new(null, named.Problems);
        }
        if (Graded is null || !GradedFolder.HasRecord(Graded))
            return Read(dealt, null, []);
        var earlier = GradedFolder.Read(Graded, dealt);
        return Read(dealt, earlier.Model, earlier.Problems);
    }

    /// <summary>The same where what is on record has been read.</summary>
    /// <param name="dealt">What was dealt, with the keys and the marking scheme that count now.</param>
    /// <param name="earlier">The earlier grades; null if there are none, or none that can be read.</param>
    /// <param name="unread">Why they cannot be read.</param>
    internal Reading<GradeRequest> Read(DealtClass dealt, ClassGrades? earlier, IReadOnlyList<Diagnostic> unread)
    {
        var deadline = new Deadline(Due, ClassFile, earlier).Settle(dealt);
        if (!deadline.Succeeded)
            return new(null, deadline.Problems);
        var corrections = Table is { } table ? CorrectionsReader.Read(table, dealt) : new([], []);
        if (!corrections.Succeeded)
            return new(null, corrections.Problems);
        var returned = Returned is null ? new(ReturnedFiles.Of(), []) : ReturnedFiles.At(Returned);
        if (!returned.Succeeded)
            return new(null, returned.Problems);
        var paper = Paper is null ? new(PaperReading.Nothing, []) : PaperFile.Read(Paper, dealt);
        if (!paper.Succeeded)
            return new(null, paper.Problems);
        return new(
            new(dealt, returned.Model)
            {
                Paper = paper.Model,
                Corrections = corrections.Model,
                Deadline = deadline.Model,
                Typed =
                    ReadsGradebook && Graded is not null
                        ? TypedIntoGradebook.Read(Graded, dealt, corrections.Model)
                        : TypedIntoGradebook.Nothing,
                TakeOver = TakeOver,
                Earlier = earlier,
                Unread = unread,
            },
            []
        );
    }

    /// <summary>The files of a graded class, and what goes to the end of the instructor's table of corrections.</summary>
    public Produced Write(GradeResult graded)
    {
        ArgumentNullException.ThrowIfNull(graded);
        if (!MayDrop && DroppedStudents.Objection(OnRecord(graded), graded.Grades, Graded ?? "") is { } objection)
            return Produced.Nothing(objection);
        return new(GradeFiles.Of(graded), GradeNotes.Of(graded), [])
        {
            Additions = Additions(graded.Grades),
            Open = [GradeFiles.ClassReport],
            Remedies = GradeNotes.Remedies(graded),
        };
    }

    /// <summary>The grades that the new ones would replace, which need not be those that they are judged like.</summary>
    private ClassGrades? OnRecord(GradeResult graded) =>
        Earlier is null ? graded.Earlier
        : Graded is not null && GradedFolder.HasRecord(Graded) ? GradedFolder.Read(Graded, graded.Grades.Dealt).Model
        : null;

    private IReadOnlyList<Addition> Additions(ClassGrades grades)
    {
        if (grades.TakenOver.Count == 0 || Graded is null)
            return [];
        var table = Table ?? Path.Combine(Graded, CorrectionsReader.FileName);
        return
        [
            new(
                table,
                CorrectionsAppender.Lines(
                    File.Exists(table) ? File.ReadAllBytes(table) : null,
                    [.. grades.TakenOver.Select(one => one.ToCorrection(GradebookWords.TakenOver))]
                )
            ),
        ];
    }

    /// <summary>The table of corrections that an instructor keeps in the folder of grades; null if there is none.</summary>
    private static string? CorrectionsIn(string graded) =>
        Path.Combine(graded, CorrectionsReader.FileName) is var path && File.Exists(path) ? path : null;
}
