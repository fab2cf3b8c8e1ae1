using ClassKit.CellFormulas.Formulas;
using ClassKit.Content.Diagnostics;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Cohorts;
using ClassKit.Exercises.Deadlines;
using ClassKit.Exercises.Dealing;
using ClassKit.Exercises.Identity;
using ClassKit.Exercises.Marking;
using ClassKit.UseCases.Output;

namespace ClassKit.UseCases.Dealing;

/// <summary>dealt.json, to and from what was dealt.</summary>
public static class DealtJson
{
    /// <summary>The file's name within a dealt folder.</summary>
    public const string FileName = "dealt.json";

    private const string Remedy = "Take dealt.json as dealing wrote it, or deal again with the same lesson, roster and seed.";

    /// <summary>More than these nobody mends by hand.</summary>
    private const int MostProblems = 20;

    /// <summary>The file's text.</summary>
    public static string Write(DealtClass dealt) => JsonStyle.Write(Document(dealt), JsonStyle.For(DealtShape.Default));

    /// <summary>Writes the file, one student at a time.</summary>
    public static void Write(Stream stream, DealtClass dealt)
    {
        ArgumentNullException.ThrowIfNull(stream);
        JsonStyle.Write(stream, Document(dealt), JsonStyle.For(DealtShape.Default));
    }

    /// <summary>Reads the file's text.</summary>
    /// <param name="file">How messages name the file.</param>
    /// <param name="text">What is in it.</param>
    public static Reading<DealtClass> Read(string file, string text)
    {
        return UntrustedJson.Read<DealtDocument, DealtClass>(file, text, Remedy, DealtShape.Default, typed: false, document =>
            Read(file, document)
        );
    }

    /// <summary>Reads the file at a path.</summary>
    internal static Reading<DealtClass> ReadFile(string path) =>
        UntrustedJson.ReadFile<DealtDocument, DealtClass>(path, Remedy, DealtShape.Default, typed: false, document => Read(path, document));

    private static Reading<DealtClass> Read(string file, DealtDocument document)
    {
        if (document.Version != DealtDocument.CurrentVersion)
            return new(
                null,
                [
                    new(
                        file,
                        null,
                        $"It is of version {document.Version}",
                        $"This program reads version {DealtDocument.CurrentVersion}: use the one that dealt it, or deal again."
                    ),
                ]
            );
        var dealt = Model(document);
        List<Diagnostic> broken =
        [
            .. DealtRules.Broken(document, dealt).Take(MostProblems).Select(what => new Diagnostic(file, null, what, Remedy)),
        ];
        return broken.Count == 0 ? new(dealt, []) : new(null, broken);
    }

    /// <summary>The deal as it stands in the file.</summary>
    internal static DealtDocument Document(DealtClass dealt)
    {
        ArgumentNullException.ThrowIfNull(dealt);
        var layout = dealt.LayOut();
        return new()
        {
            Version = DealtDocument.CurrentVersion,
            Lesson = dealt.Lesson,
            LessonTitle = dealt.LessonTitle,
            Cohort = dealt.Cohort,
            Identity = dealt.Identity is { } identity ? new(identity.Code, identity.Digest) : null,
            Replaces = dealt.Replaces is { } replaced ? new(replaced.Code, replaced.Digest) : null,
            Purpose = Word(dealt.Purpose),
            TimeZone = dealt.TimeZone?.Id,
            Paper = dealt.Paper is { } paper ? Word(paper) : null,
            Due = DueEntry.Of(dealt.Due),
            Layout = PlanEntry.Of(dealt.Plan),
            Seed = dealt.Seed,
            Marking = new(
                dealt.Marking.Id,
                dealt.Marking.Title,
                dealt.Marking.AccuracyShare,
                dealt.Marking.FollowThroughShare,
                dealt.Marking.MisconceptionShare,
                dealt.Marking.TeachAgainBelow,
                dealt.Marking.UnitSlipShare,
                dealt.Marking.RoundingSlipShare
            )
            {
                NearMissShare = dealt.Marking.NearMissShare,
                SeveralVersions = Word(dealt.Marking.Versions),
                Late = dealt.Marking.Late is { } late ? new(late.ADay, late.AtMost) : null,
                BestExercises = dealt.Marking.Total.BestExercises,
                PointsAtMost = dealt.Marking.Total.PointsAtMost,
            },
            Exercises = [.. dealt.Exercises.Select(Entry)],
            Students = new(
                new Projected<DealtStudent, DealtDocument.StudentEntry>(dealt.Students, student => DealtLists.Entry(layout, student))
            ),
        };
    }

    private static DealtDocument.ExerciseEntry Entry(Exercise exercise) =>
        new(
            exercise.Id,
            exercise.Title,
            exercise.Skill,
            Word(exercise.Level),
            exercise.Minutes,
            exercise.Source,
            exercise.Problem.Written,
            [
                .. exercise.Givens.Select(given => new DealtDocument.GivenEntry(
                    given.Id,
                    given.Label,
                    given.Unit.Sign,
                    given.From,
                    given.To,
                    given.Step
                )),
            ],
            [.. exercise.Constraints.Select(constraint => constraint.Text)],
            [.. exercise.Parts.Select(Entry)],
            exercise.Hints
        )
        {
            Steps =
                exercise.Steps.Count == 0
                    ? null
                    : [.. exercise.Steps.Select(step => new DealtDocument.StepEntry(step.Id, step.What, step.Key.Text, step.Unit.Sign))],
            Picture = DealtPicture.Entry(exercise.Picture),
        };

    private static DealtDocument.PartEntry Entry(Part part) =>
        new(
            part.Id,
            part.Ask,
            part.Key.Text,
            part.Unit.Sign,
            new(part.Tolerance.Amount, part.Tolerance.IsRelative) { Rounding = part.Tolerance.IsRounding },
            part.Points,
            part.FormulaAsked,
            [
                .. part.Misconceptions.Select(misconception => new DealtDocument.MisconceptionEntry(
                    misconception.Id,
                    misconception.Formula.Text,
                    misconception.Words
                )
                {
                    Written = misconception.Written?.Text,
                }),
            ]
        )
        {
            Written = part.Written?.Text,
            InWords = part.InWords is { } words ? new(InWords, words.LookFor) : null,
            Choice = part.Choice is { From: var list, Why: var why, Drawing: var drawing }
                ? new(Word(list.Kind), list.Id, Entries(list.Options), why)
                {
                    Drawing = drawing is null ? null : new(DrawnThings.Name(drawing.Thing), Entries(drawing.States)),
                }
                : null,
        };

    /// <summary>The deal that stands in a file, before it is held against any rule.</summary>
    /// <exception cref="FormatException">Something in it is nothing that can be dealt.</exception>
    internal static DealtClass Model(DealtDocument document)
    {
        var exercises = document.Exercises.Select(Model).ToList();
        return new(
            document.Lesson,
            document.LessonTitle,
            document.Cohort,
            document.Seed,
            Model(document.Marking),
            exercises,
            [
                .. Namesakes
                    .ToldApart([.. document.Students.Who()])
                    .Zip(document.Students, (who, entry) => DealtLists.Model(who, entry, exercises)),
            ]
        )
        {
            Identity = document.Identity is { } identity ? Identity(identity) : null,
            Replaces = document.Replaces is { } replaced ? Identity(replaced) : null,
            Purpose = Purpose(document.Purpose),
            TimeZone = document.TimeZone is { } zone ? Zone(zone) : null,
            Paper = document.Paper is { } paper ? PaperOf(paper) : null,
            Due = DueEntry.Model(document.Due),
            Plan = DealtLists.Named(PlanEntry.Model(document.Layout), exercises, document.Students),
        };
    }

    private static MarkingScheme Model(DealtDocument.MarkingEntry entry) =>
        new(entry.Id, entry.Title, entry.AccuracyShare, entry.FollowThroughShare, entry.MisconceptionShare, entry.TeachAgainBelow)
        {
            UnitSlipShare = entry.UnitSlipShare,
            RoundingSlipShare = entry.RoundingSlipShare,
            NearMissShare = entry.NearMissShare,
            Versions = Versions(entry.SeveralVersions),
            Late = entry.Late is { } late ? new(late.ADay, late.AtMost) : null,
            Total = new(entry.BestExercises, entry.PointsAtMost),
        };

    private static DealIdentity Identity(DealtDocument.IdentityEntry entry) =>
        DealIdentity.Read(entry.Digest) is { } identity && identity.Code == entry.Code
            ? identity
            : throw new FormatException(
                $"Its identity has the code “{entry.Code}” and the digest “{entry.Digest}”, which do not belong together"
            );

    private static string? Word(DealPurpose purpose) =>
        purpose switch
        {
            DealPurpose.Graded => null,
            DealPurpose.Practice => "practice",
            DealPurpose.FollowUp => "follow-up",
            DealPurpose.Rehearsal => "rehearsal",
        };

    private static DealPurpose Purpose(string? word) =>
        word switch
        {
            null => DealPurpose.Graded,
            "practice" => DealPurpose.Practice,
            "follow-up" => DealPurpose.FollowUp,
            "rehearsal" => DealPurpose.Rehearsal,
            _ => throw new FormatException($"“{word}” is nothing that is dealt for; expected practice, follow-up or rehearsal"),
        };

    private static string Word(Paper paper) =>
        paper switch
        {
            Paper.A4 => "A4",
            Paper.Letter => "Letter",
        };

    private static Paper PaperOf(string word) =>
        word switch
        {
            "A4" => Paper.A4,
            "Letter" => Paper.Letter,
            _ => throw new FormatException($"“{word}” is no paper that is known here; expected A4 or Letter"),
        };

    private static ClassTimeZone Zone(string id) =>
        ClassTimeZone.Find(id)
        ?? throw new FormatException($"“{id}” is no time zone that is known here; expected an IANA name such as Europe/Paris");

    private static Exercise Model(DealtDocument.ExerciseEntry entry) =>
        new(
            entry.Id,
            entry.Title,
            entry.Skill,
            Level(entry.Level),
            entry.Minutes,
            entry.Source,
            entry.Problem,
            [.. entry.Givens.Select(given => new Given(given.Id, given.Label, Unit.Of(given.Unit), given.From, given.To, given.Step))],
            [.. entry.Constraints.Select(CellFormula.Of)],
            [.. entry.Parts.Select(Model)],
            entry.Hints
        )
        {
            Steps =
            [
                .. (entry.Steps ?? []).Select(step => new WorkingStep(step.Id, step.What, CellFormula.Of(step.Key), Unit.Of(step.Unit))),
            ],
            Picture = DealtPicture.Model(entry.Picture),
        };

    private static Part Model(DealtDocument.PartEntry entry) =>
        new(
            entry.Id,
            entry.Ask,
            CellFormula.Of(entry.Key),
            Unit.Of(entry.Unit),
            new(entry.Tolerance.Amount, entry.Tolerance.Relative) { IsRounding = entry.Tolerance.Rounding },
            entry.Points,
            entry.FormulaAsked,
            [
                .. entry.Misconceptions.Select(misconception => new Misconception(
                    misconception.Id,
                    CellFormula.Of(misconception.Formula),
                    misconception.Words
                )
                {
                    Written = Formula(misconception.Written),
                }),
            ]
        )
        {
            Written = Formula(entry.Written),
            InWords = entry.InWords is { } words
                ? new(
                    words.Kind == InWords
                        ? words.LookFor
                        : throw new FormatException($"“{words.Kind}” is no way to answer in words; expected {InWords}")
                )
                : null,
            Choice = entry.Choice is { } choice
                ? new(new(choice.List, Kind(choice.Kind), Options(choice.Options)), choice.Why)
                {
                    Drawing = choice.Drawing is { } drawing ? new(Thing(drawing.Thing), Options(drawing.States)) : null,
                }
                : null,
        };

    private static List<DealtDocument.OptionEntry> Entries(IReadOnlyList<ChoiceOption> options) =>
        [.. options.Select(option => new DealtDocument.OptionEntry(option.Id, option.Words))];

    private static List<ChoiceOption> Options(IReadOnlyList<DealtDocument.OptionEntry> entries) =>
        [.. entries.Select(entry => new ChoiceOption(entry.Id, entry.Words))];

    private static DrawnThing Thing(string name) =>
        DrawnThings.Find(name)
        ?? throw new FormatException(
            $"“{name}” is nothing that can be drawn; expected {string.Join(" or ", DrawnThings.All.Select(DrawnThings.Name))}"
        );

    private const string InWords = "written";

    private static string Word(ChoiceKind kind) =>
        kind switch
        {
            ChoiceKind.Choose => "choose",
            ChoiceKind.Match => "match",
            ChoiceKind.Order => "order",
        };

    private static ChoiceKind Kind(string word) =>
        word switch
        {
            "choose" => ChoiceKind.Choose,
            "match" => ChoiceKind.Match,
            "order" => ChoiceKind.Order,
            _ => throw new FormatException($"“{word}” is no way to choose; expected choose, match or order"),
        };

    private static CellFormula? Formula(string? text) => text is null ? null : CellFormula.Of(text);

    private static string Word(ExerciseLevel level) =>
        level switch
        {
            ExerciseLevel.Guided => "guided",
            ExerciseLevel.Standard => "standard",
            ExerciseLevel.Open => "open",
        };

    private static ExerciseLevel Level(string word) =>
        word switch
        {
            "guided" => ExerciseLevel.Guided,
            "standard" => ExerciseLevel.Standard,
            "open" => ExerciseLevel.Open,
            _ => throw new FormatException($"“{word}” is no level; expected guided, standard or open"),
        };

    private static string Word(VersionChoice versions) =>
        versions switch
        {
            VersionChoice.Best => "best",
            VersionChoice.Newest => "newest",
        };

    private static VersionChoice Versions(string word) =>
        word switch
        {
            "best" => VersionChoice.Best,
            "newest" => VersionChoice.Newest,
            _ => throw new FormatException($"“{word}” is no choice among several versions; expected best or newest"),
        };
}
