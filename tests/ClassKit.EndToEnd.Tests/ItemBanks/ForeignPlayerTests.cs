using System.Text;
using ClassKit.Exercises.Authoring;
using ClassKit.ItemBanks.Packages;
using ClassKit.Tests.Exercises;

namespace ClassKit.EndToEnd.Tests.ItemBanks;

/// <summary>
/// Every exercise as an item, played in a browser by somebody else's implementation of the standard and marked by our own grader as well.
/// </summary>
public sealed class ForeignPlayerTests
{
    private const ulong Seed = 3;

    [Fact]
    public Task With_fixed_numbers_it_scores_and_says_what_the_grader_does() =>
        PlayAsync(ItemBank.OfVariants("all", ShippedExercises.All, 1, Seed));

    [Fact]
    public Task With_numbers_that_the_player_draws_it_scores_and_says_what_the_grader_does() =>
        PlayAsync(ItemBank.OfTemplates("all", ShippedExercises.All, 1, Seed));

    private static async Task PlayAsync(ItemBank bank)
    {
        var files = ForeignPlayer.FilesOf(bank);
        await using var player = await ForeignPlayer.OpenAsync(files);
        var differences = new List<string>();
        var tries = 0;
        foreach (var (path, bytes) in files.Where(file => file.Key.StartsWith("items/", StringComparison.Ordinal)))
        {
            var identifier = Path.GetFileNameWithoutExtension(path);
            var exercise = ShippedExercises.All.Single(one => one.Id == identifier || $"{one.Id}_001" == identifier);
            var own = new OwnMark(exercise, await player.ShowAsync(identifier, Encoding.UTF8.GetString(bytes)));
            if (!await player.SeesPicturesAsync())
                differences.Add($"{identifier}: its picture cannot be seen");
            foreach (var answers in Tries(exercise, own))
            {
                tries++;
                var theirs = await player.AnswerAsync([
                    .. exercise.Parts.Select(part => answers.TryGetValue(part, out var value) ? OwnMark.Entered(part, value) : null),
                ]);
                var ours = own.Of(answers);
                var entered = string.Join("; ", answers.Select(answer => $"{answer.Key.Id} {OwnMark.Entered(answer.Key, answer.Value)}"));
                if (Math.Abs(theirs.Score - ours.Score) > 1e-9)
                    differences.Add($"{identifier}: {entered}: theirs {theirs.Score}, ours {ours.Score}");
                // Our grader follows an answer through and then names no wrong turn, so the player may say more.
                foreach (var words in ours.Said.Where(words => !theirs.Said.Contains(words)))
                    differences.Add(
                        $"{identifier}: {entered}: the player does not say “{words}”, but “{string.Join("”, “", theirs.Said)}”"
                    );
            }
        }
        Assert.Empty(player.Complaints);
        Assert.True(differences.Count == 0, string.Join("\n", differences));
        Assert.True(tries > 5 * ShippedExercises.All.Count, $"{tries} tries");
        TestContext.Current.SendDiagnosticMessage("{0} items, {1} tries", bank.Items, tries);
    }

    /// <summary>
    /// Nothing; all right; each part by a known wrong turn, just within its tolerance and well beyond it, the others right.
    /// </summary>
    private static IEnumerable<Dictionary<Part, double>> Tries(Exercise exercise, OwnMark own)
    {
        Part[] judged = [.. exercise.Parts.Where(part => part.InWords is null)];
        var right = judged.ToDictionary(part => part, own.Right);
        yield return [];
        yield return right;
        foreach (var part in judged)
        {
            foreach (var wrong in part.Misconceptions.Select(own.Wrong).OfType<double>())
                yield return With(wrong);
            if (part.Choice is { From: var list })
            {
                for (var number = 1; number <= list.Options.Count; number++)
                    yield return With(number);
                continue;
            }
            var (low, high) = part.Tolerance.Range(own.Right(part));
            yield return With(own.Right(part) + (high - own.Right(part)) * 0.999);
            yield return With(own.Right(part) - (own.Right(part) - low) * 0.999);
            yield return With(own.Right(part) + (high - own.Right(part)) * 1.01 + 1e-6);
            yield return With(own.Right(part) * -3 - 7);

            Dictionary<Part, double> With(double value) => new(right) { [part] = value };
        }
    }
}
