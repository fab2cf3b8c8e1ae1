using ClassKit.Content.Diagnostics;
using ClassKit.Content.Sources;
using ClassKit.Exercises.Choosing;
using ClassKit.Exercises.Dealing;
using ClassKit.Terms.Difficulty;
using ClassKit.UseCases.Output;

namespace ClassKit.UseCases.Dealing;

/// <summary>Where what dealing takes lies on disk.</summary>
/// <param name="Folder">The lesson's folder, or one of exercises.</param>
/// <param name="Roster">The students; null for those of the list that the class profile names.</param>
/// <param name="Wish">What is wanted of the deal.</param>
public sealed record DealPaths(string Folder, string? Roster, DealWish Wish)
{
    /// <summary>The class profile, for the class's name and time zone; null for none.</summary>
    public string? ClassFile { get; init; }

    /// <summary>The output folder: a deal that it holds is added to and never replaced. Null for a new one.</summary>
    public string? Into { get; init; }

    /// <summary>The folder of the deal that this one is sat again for; null for a first sitting.</summary>
    public string? ResitOf { get; init; }

    /// <summary>The ids of those of the roster who are dealt to; empty for everybody.</summary>
    public IReadOnlyList<string> Only { get; init; } = [];

    /// <summary>Reads what earlier classes earned; null where nobody named it.</summary>
    public Func<Reading<PastDifficulty>>? Past { get; init; }

    /// <summary>All that dealing takes, or everything that is wrong with it.</summary>
    public Reading<DealRequest> Read()
    {
        var before = EarlierDeal.In(Into);
        if (!before.Succeeded)
            return new(null, before.Problems);
        var library = Library.OfPaths();
        if (ClassList.Named(library, Roster, ClassFile) is not { } list)
            return new(null, [ClassList.Missing(ClassFile ?? Folder)]);
        var roster = ClassList.Read(list, ClassFile is null ? null : library.At(ClassFile));
        var replaced = ResitOf is null ? null : DealtFolder.Read(ResitOf);
        var set = PracticeSet.Read(library.At(Folder), Wanted(replaced?.Model), Wish.Seed);
        var past = Past?.Invoke();
        if (!set.Succeeded || !roster.Succeeded || replaced is { Succeeded: false } || past is { Succeeded: false })
            return new(null, [.. set.Problems, .. roster.Problems, .. replaced?.Problems ?? [], .. past?.Problems ?? []]);
        if (Strangers(roster.Model, list.Path) is { Count: > 0 } strangers)
            return new(null, strangers);
        var dealtTo =
            Only.Count == 0
                ? roster.Model
                : roster.Model with
                {
                    Students = [.. roster.Model.Students.Where(student => Only.Contains(student.Id))],
                };
        var earlier = set.Model.IsBank ? (before.Model.Dealt ?? replaced?.Model)?.LessonTitle : null;
        return new(
            new(set.Model with { Title = Wish.Title ?? earlier ?? set.Model.Title }, dealtTo, Wish with { IsBalanced = past is not null })
            {
                Earlier = before.Model,
                Replaces = replaced?.Model,
                Past = past?.Model,
            },
            []
        );
    }

    /// <summary>Where nothing is asked of a resit, it is of the exercises that those who sit again were dealt.</summary>
    private SetWish Wanted(DealtClass? replaced)
    {
        if (replaced is null || !Wish.Set.IsNone)
            return Wish.Set;
        var again = replaced.Students.Where(seat => Only.Count == 0 || Only.Contains(seat.Who.Id)).ToList();
        var exercises = replaced.Exercises.Select(exercise => exercise.Id);
        return Wish.Set with { Exercises = [.. exercises.Where(id => again.Count == 0 || again.Exists(seat => seat.Has(id)))] };
    }

    private List<Diagnostic> Strangers(ClassKit.Exercises.Cohorts.Roster roster, string file) =>
        [
            .. Only.Except(roster.Students.Select(student => student.Id))
                .Select(id => new Diagnostic(
                    file,
                    null,
                    $"There is no student `{id}` on the roster",
                    "Name a student by the id that the roster has."
                )),
        ];

    /// <summary>The files of the deal.</summary>
    public static Produced Write(DealMade deal) =>
        new(DealFiles.Of(deal), DealNotes.Of(deal), [])
        {
            Open = [DealFiles.FirstToOpen(deal.Dealt)],
            Remedies = deal.Request.Wish.Due is null ? [] : DueRemedies.Of(deal.Dealt.Due),
        };
}
