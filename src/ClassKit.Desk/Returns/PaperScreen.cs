using ClassKit.Content.Diagnostics;
using ClassKit.Desk.Folders;
using ClassKit.Desk.Rounds;
using ClassKit.Desk.Safety;
using ClassKit.Desk.Serving;
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
                (_, state) => MadeFiles.Keep(visit, MakePaperSheet.Write(MakePaperSheet.Run(new(state.Dealt), Run.Unwatched)).Files[0])
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
        else if (Keep(state, content) is { Count: > 0 } problems)
            await ReturnsScreen.Show(visit, known, state, problems);
        else
            await visit.Begin(RoundGrading.Judge(state));
    }

    /// <summary>The newest counts; those before it stay beside it.</summary>
    private static IReadOnlyList<Diagnostic> Keep(RoundState state, byte[] content)
    {
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
            var number = 1;
            var before = file;
            while (File.Exists(before))
                before = string.Create(
                    System.Globalization.CultureInfo.InvariantCulture,
                    $"{Path.ChangeExtension(file, null)} before {number++}.xlsx"
                );
            FileMoves.All(before == file ? [(part, file)] : [(file, before), (part, file)]);
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
}
