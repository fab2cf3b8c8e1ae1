using ClassKit.Desk.Folders;
using ClassKit.Desk.Serving;
using ClassKit.Desk.Week;
using ClassKit.Exercises.Cohorts;
using ClassKit.Pages.ClassPrints;
using ClassKit.Pages.Trays;
using ClassKit.UseCases.Dealing;
using ClassKit.UseCases.Grading;
using ClassKit.Wording.Cohorts;

namespace ClassKit.Desk.Prep;

/// <summary>
/// Everybody's sheets of one round, to be printed together with the pages of a lesson: the exercises as they were handed out, or what each
/// student is told of theirs.
/// </summary>
/// <param name="State">The round.</param>
/// <param name="Part">Which students; a large class has several files.</param>
/// <param name="IsFeedback">True for what students are told, false for their exercises.</param>
public sealed record RoundPrint(RoundState State, ClassPart Part, bool IsFeedback)
{
    /// <summary>How forms call it.</summary>
    public string Name =>
        $"{State.Round.Name}/{(IsFeedback ? "graded" : "dealt")}/{Part.Named(IsFeedback ? GradeFiles.FeedbackToPrint : DealFiles.SheetsToPrint)}";

    /// <summary>What it is called.</summary>
    public string Title =>
        ClassPartWords.Title(
            $"{(IsFeedback ? "Feedback" : "Practice sheets")}, round {State.Round.Number}: {State.Dealt.LessonTitle}",
            Part
        );

    /// <summary>Where it can be looked at.</summary>
    public string Page => $"rounds/{State.Round.Class}/{Name}";

    /// <summary>The text of its file.</summary>
    public string Html => File.ReadAllText(Path.Combine(Path.GetDirectoryName(State.Round.Folder)!, Name));

    /// <summary>As it is printed.</summary>
    public PrintedPage Printed =>
        PrintedPage.Of(
            Name,
            Title,
            Html,
            IsFeedback ? PrintedClass.OfFeedback(State.Grades!, Part) : PrintedClass.OfSheets(State.Dealt, Part)
        );

    /// <summary>Those of a class's latest rounds that are there.</summary>
    internal static IReadOnlyList<RoundPrint> Of(Visit visit, ClassEntry known) =>
        [
            .. visit
                .Folder.Rounds(known)
                .Take(ClassTicket.MostRounds)
                .Select(visit.Look)
                .OfType<RoundState>()
                .SelectMany(state =>
                    new[] { false, true }
                        .Where(told => !told || state.Grades is not null)
                        .SelectMany(told => ClassPart.Of(state.Dealt.Students.Count).Select(part => new RoundPrint(state, part, told)))
                )
                .Where(print => File.Exists(Path.Combine(Path.GetDirectoryName(print.State.Round.Folder)!, print.Name))),
        ];
}
