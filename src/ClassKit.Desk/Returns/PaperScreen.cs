using ClassKit.Content.Diagnostics;
using ClassKit.Desk.Folders;
using ClassKit.Desk.Jobs;
using ClassKit.Desk.Rounds;
using ClassKit.Desk.Safety;
using ClassKit.Desk.Serving;
using ClassKit.Grading.OnPaper;
using ClassKit.Notes;
using ClassKit.UseCases.Output.Writing;
using ClassKit.UseCases.Papers;
using ClassKit.UseCases.Running;

namespace ClassKit.Desk.Returns;

/// <summary>Answers that were written on paper: the workbook to type them into, and back.</summary>
internal static class PaperScreen
{
    private const string Page = "rounds/{class}/{round}/paper";

    /// <summary>More than a workbook of typed answers has, in bytes.</summary>
    private const int MostBytes = 50 << 20;

    public static void AddTo(DeskRoutes routes)
    {
        routes.LookInside(Page + "/sheet", visit =>
            visit.InRound(
                (_, state) =>
                    MadeFiles.Keep(
                        visit,
                        MakePaperSheet
                            .Write(MakePaperSheet.Run(new(state.Dealt) { Typed = Standing(state) ?? PaperReading.Nothing }, Run.Unwatched))
                            .Files[0]
                    )
            )
        );
        routes.Receive(Page, (visit, files) => visit.InRound((known, state) => Take(visit, known, state, files)));
    }

    private static async Task Take(Visit visit, ClassEntry known, RoundState state, SentFiles files)
    {
        var sent = await files.OnlyAsync(MostBytes, visit.Context.RequestAborted);
        if (sent?.Content is not { } content)
            await ReturnsScreen.Show(
                visit,
                known,
                state,
                [
                    new(
                        sent?.Name ?? "file",
                        null,
                        sent is null ? "No file was chosen" : "It is too large to be such a workbook",
                        "Choose the workbook with the answers typed in."
                    ),
                ]
            );
        else if (Keep(state, content, out var said) is { Count: > 0 } problems)
            await ReturnsScreen.Show(visit, known, state, [.. problems.Select(problem => Worded(problem, sent.Value.Name))]);
        else
        {
            var judged = RoundGrading.Judge(state);
            await visit.Begin(
                judged with
                {
                    Work = run => judged.Work(run) is var end ? end with { Lines = [.. said, .. end.Lines] } : end,
                }
            );
        }
    }

    /// <summary>What was typed and brought back before; null where nothing was, or where it can no longer be read.</summary>
    private static PaperReading? Standing(RoundState state) =>
        File.Exists(state.Round.Paper) ? PaperFile.Read(state.Round.Paper, state.Dealt).Model : null;

    /// <summary>Nobody at the desk names a file: it is taken from a page and brought back there.</summary>
    private static Diagnostic Worded(Diagnostic problem, string sent) =>
        Path.GetFileName(problem.File).EndsWith(".new", StringComparison.Ordinal)
            ? problem with
            {
                File = "",
                Found = $"`{sent}` is not taken in. {problem.Found}",
                Expected = "Take the workbook for answers on paper of this round from here, type into it, and bring that one back.",
            }
            : problem;

    /// <summary>
    /// Takes it in together with what was brought back before: whoever has no answer in the new one keeps theirs. What was brought, and what
    /// counted before, stay beside it.
    /// </summary>
    /// <param name="state">The round.</param>
    /// <param name="content">The workbook.</param>
    /// <param name="said">What the instructor should know: who has other answers now than before, and what could not be taken over.</param>
    private static IReadOnlyList<Diagnostic> Keep(RoundState state, byte[] content, out IReadOnlyList<string> said)
    {
        said = [];
        var file = state.Round.Paper;
        var part = file + ".new";
        try
        {
            Directory.CreateDirectory(Path.GetDirectoryName(file)!);
            File.WriteAllBytes(part, content);
            var read = PaperFile.Read(part, state.Dealt);
            if (!read.Succeeded)
            {
                File.Delete(part);
                return read.Problems;
            }
            var before = Standing(state)?.Work ?? [];
            var brought = read.Model.Work.ToDictionary(work => work.Student.Who.Id);
            var left = before.Where(work => !brought.ContainsKey(work.Student.Who.Id)).ToList();
            List<(string, string)> moves = File.Exists(file) ? [(file, Free(file, "before"))] : [];
            if (left.Count == 0)
                moves.Add((part, file));
            else
            {
                var both = part + "er";
                File.WriteAllBytes(both, WithBefore(state, [.. left, .. read.Model.Work]));
                moves.AddRange([(part, Free(file, "brought")), (both, file)]);
            }
            FileMoves.All(moves);
            said =
            [
                .. before
                    .Where(work =>
                        brought.TryGetValue(work.Student.Who.Id, out var now) && !work.Answers.ToHashSet().SetEquals(now.Answers)
                    )
                    .Select(work => $"{work.Student.Who.Shown} has other answers on paper than before: what you brought now counts."),
                // What is put together holds nothing that could not be taken over, so that the marking has nothing to tell of it.
                .. left.Count == 0 ? [] : NoteLineWords.OfAll([.. read.Model.Faults.Select(fault => new Note.PaperFault(fault))]),
            ];
            return [];
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            return
            [
                new(
                    file,
                    null,
                    $"It could not be kept: {failure.Message}",
                    "Check that there is room, and that no other program has it open. What was typed before still counts."
                ),
            ];
        }
    }

    private static byte[] WithBefore(RoundState state, IReadOnlyList<PaperWork> work)
    {
        var sheet = MakePaperSheet.Run(new(state.Dealt) { Typed = new(work, []) }, Run.Unwatched);
        return MakePaperSheet.Write(sheet).Files[0].Content;
    }

    private static string Free(string file, string what)
    {
        var folder = Path.GetDirectoryName(file)!;
        return Path.Combine(
            folder,
            FreeName.In(folder, number =>
                string.Create(
                    System.Globalization.CultureInfo.InvariantCulture,
                    $"{Path.GetFileNameWithoutExtension(file)} {what} {number}.xlsx"
                )
            )
        );
    }
}
