using System.Text;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.Learning;
using ClassKit.Content.Sources;
using ClassKit.Desk.Folders;
using ClassKit.Desk.Serving;
using ClassKit.Desk.Texts;
using ClassKit.UseCases.Grading;
using ClassKit.UseCases.Learning;
using ClassKit.UseCases.Running;

namespace ClassKit.Desk.Again;

/// <summary>
/// Wrong turns that a class took and no exercise lists: read over, said in the instructor's own words, and put into the instructor's own
/// exercises.
/// </summary>
internal static class LearnScreen
{
    private const string Page = "rounds/{class}/{round}/learn";

    public static void AddTo(DeskRoutes routes)
    {
        routes.LookInside(Page, visit =>
            visit.InRound((known, state) => Proposals(state) is { } text ? Show(visit, known, state, text, []) : visit.Nothing())
        );
        routes.TakeInside(Page, visit =>
            visit.InRound(
                (known, state) => Proposals(state) is null ? visit.Nothing() : Learn(visit, known, state, visit.Text("proposals"))
            )
        );
    }

    /// <summary>What was proposed after the round; null if nothing was.</summary>
    public static string? Proposals(RoundState state) => OwnText.Read(Path.Combine(state.Round.Graded, GradeFiles.Proposals))?.Text;

    private static Task Learn(Visit visit, ClassEntry known, RoundState state, string text)
    {
        var tree = ListedTree.InMemory([KeyValuePair.Create(GradeFiles.Proposals, Encoding.UTF8.GetBytes(text))]);
        var proposals = new Library(tree).At(GradeFiles.Proposals);
        var read = ProposedMisconception.Read(proposals);
        if (!read.Succeeded)
            return Show(visit, known, state, text, read.Problems);
        List<TextEntry> own = [.. OwnExercises(visit.Folder, read.Model)];
        // As they are before anything is worked out from them.
        var before = own.ToDictionary(entry => entry.Path, entry => OwnText.Read(entry.Path));
        var learned = LearnMisconceptions.Run(new(proposals, [.. own.Select(entry => Library.OfPaths().At(entry.Path))]), Run.Unwatched);
        if (!learned.Succeeded)
            return Show(visit, known, state, text, learned.Problems);
        var refused = OwnTexts.Write([
            .. learned.Model.Select(one =>
            {
                var path = own.First(entry => Path.GetFileName(entry.Path) == one.Name).Path;
                return new NewText(path, before[path], one.Text);
            }),
        ]);
        return refused is not null
            ? Show(visit, known, state, text, [refused])
            : visit.Show<LearnPage>(
                (nameof(LearnPage.Class), known),
                (nameof(LearnPage.Round), state),
                (nameof(LearnPage.Text), text),
                (nameof(LearnPage.Problems), Array.Empty<Diagnostic>()),
                (
                    nameof(LearnPage.Learned),
                    learned.Model.Select(one => own.First(entry => Path.GetFileName(entry.Path) == one.Name)).ToList()
                )
            );
    }

    /// <summary>The exercises of the folder that proposals are for, each once.</summary>
    private static IEnumerable<TextEntry> OwnExercises(TeachingFolder folder, IReadOnlyList<ProposedMisconception> proposals)
    {
        var wanted = proposals.Select(piece => piece.Exercise).ToHashSet(StringComparer.Ordinal);
        return folder
            .Texts()
            .Where(entry =>
                wanted.Contains(Path.GetFileNameWithoutExtension(entry.Path)) && entry.Path.EndsWith(".md", StringComparison.Ordinal)
            )
            .DistinctBy(entry => Path.GetFileName(entry.Path));
    }

    private static Task Show(Visit visit, ClassEntry known, RoundState state, string text, IReadOnlyList<Diagnostic> problems) =>
        visit.Show<LearnPage>(
            (nameof(LearnPage.Class), known),
            (nameof(LearnPage.Round), state),
            (nameof(LearnPage.Text), text),
            (nameof(LearnPage.Problems), problems)
        );
}
