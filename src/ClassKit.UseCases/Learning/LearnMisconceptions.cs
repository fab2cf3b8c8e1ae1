using System.Text;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.Exercises;
using ClassKit.Content.Learning;
using ClassKit.Content.Sources;
using ClassKit.Notes;
using ClassKit.UseCases.Checking;
using ClassKit.UseCases.Output;
using ClassKit.UseCases.Running;

namespace ClassKit.UseCases.Learning;

/// <summary>Puts proposed misconceptions into the exercises that they are for, and proves every changed exercise again.</summary>
public static class LearnMisconceptions
{
    /// <summary>The kind of folder that its files go into.</summary>
    public const string Kind = "learn";

    /// <summary>
    /// The changed exercises, or everything that is wrong: a proposal that fits none, an exercise that cannot be read with it, one whose
    /// variants do not keep it apart.
    /// </summary>
    /// <exception cref="OperationCanceledException">The run was stopped.</exception>
    public static Reading<IReadOnlyList<LearnedExercise>> Run(LearnRequest request, Run run)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(run);
        var proposals = ProposedMisconception.Read(request.Proposals);
        if (!proposals.Succeeded)
            return new(null, proposals.Problems);
        var named = request.Exercises.ToLookup(source => Path.GetFileNameWithoutExtension(source.Path), StringComparer.Ordinal);
        if (named.FirstOrDefault(sources => sources.Count() > 1) is { } twice)
            return new(
                null,
                [
                    new(
                        twice.Last().Path,
                        null,
                        $"Two exercises are called `{twice.Key}`: the other is {twice.First().Path}",
                        "Name the one that the misconceptions belong to."
                    ),
                ]
            );
        var files = named.ToDictionary(sources => sources.Key, sources => sources.Single(), StringComparer.Ordinal);
        List<Diagnostic> problems =
        [
            .. proposals.Model.Where(piece => !files.ContainsKey(piece.Exercise)).Select(piece => NoExercise(request, piece)),
        ];
        var learned = new List<LearnedExercise>();
        foreach (
            var pieces in run.Each(
                RunStep.ProvingExercises,
                proposals.Model.Where(piece => files.ContainsKey(piece.Exercise)).GroupBy(piece => piece.Exercise).ToList()
            )
        )
        {
            var one = Learn(files[pieces.Key], [.. pieces]);
            problems.AddRange(one.Problems);
            if (one.Succeeded)
                learned.Add(one.Model);
        }
        return problems.Count > 0 ? new(null, problems) : new(learned, []);
    }

    /// <summary>What is written: the exercises, each under its own name.</summary>
    public static Produced Write(IReadOnlyList<LearnedExercise> learned)
    {
        ArgumentNullException.ThrowIfNull(learned);
        return new([.. learned.Select(one => OutputFile.OfText(one.Name, () => one.Text))], [.. learned.Select(Told)], []);
    }

    private static Note Told(LearnedExercise one) =>
        new Note.Learned(
            one.Name,
            [
                .. one.Added.Select(piece =>
                    one.After.Proof.Exercise.Parts.Single(part => part.Id == piece.Part)
                        .Misconceptions.Single(listed => listed.Id == piece.Id)
                ),
            ],
            one.Before.Proof.Profile.Kept,
            one.After.Proof.Profile.Kept,
            one.After.Proof.Profile.Draws
        );

    private static Reading<LearnedExercise> Learn(Source file, IReadOnlyList<ProposedMisconception> pieces)
    {
        var before = ExerciseReader.Read(file);
        if (!before.Succeeded)
            return new(null, before.Problems);
        var text = ExerciseText.With(file, pieces);
        if (!text.Succeeded)
            return new(null, text.Problems);
        var name = Path.GetFileName(file.Path);
        var changed = new Library(ListedTree.InMemory([KeyValuePair.Create(name, Encoding.UTF8.GetBytes(text.Model))])).At(name);
        var read = ExerciseReader.Read(changed);
        if (!read.Succeeded)
            return new(null, read.Problems);
        var after = ProvedExercise.Of(changed)!;
        return after.Problem is { } problem
            ? new(null, [problem])
            : new(new(name, text.Model, pieces, ProvedExercise.Of(file)!, after), []);
    }

    private static Diagnostic NoExercise(LearnRequest request, ProposedMisconception piece) =>
        new(
            request.Proposals.Path,
            piece.Line,
            $"`{piece.Id}` is for the exercise `{piece.Exercise}`, which is not among the files given",
            "Give its file as well, or take the misconception out of the proposals."
        );
}
