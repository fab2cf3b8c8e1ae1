using ClassKit.CellFormulas.Formulas;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.FrontMatter;
using ClassKit.Content.Outline;
using ClassKit.Content.Pictures;
using ClassKit.Content.Quantities;
using ClassKit.Content.Sources;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Pictures;

namespace ClassKit.Content.Exercises;

/// <summary>Reads an exercise: a Markdown file whose name is the exercise's id.</summary>
public static class ExerciseReader
{
    private static readonly Dictionary<string, ExerciseLevel> Levels = new()
    {
        ["guided"] = ExerciseLevel.Guided,
        ["standard"] = ExerciseLevel.Standard,
        ["open"] = ExerciseLevel.Open,
    };

    /// <summary>The exercise, or everything that is wrong with its file.</summary>
    public static Reading<Exercise> Read(Source source)
    {
        var placed = ReadPlaced(source);
        return new(placed.Model?.Exercise, placed.Problems) { Doubts = placed.Doubts };
    }

    /// <summary>The exercise with where its pieces stand, or everything that is wrong with its file.</summary>
    public static Reading<PlacedExercise> ReadPlaced(Source source)
    {
        ArgumentNullException.ThrowIfNull(source);
        return source.Once(() => ReadFile(source));
    }

    private static Reading<PlacedExercise> ReadFile(Source source)
    {
        var problems = new ProblemList(source.Shown);
        return SourceFile.Read(source, problems) is { } text ? Read(source, text, problems) : problems.Fail<PlacedExercise>();
    }

    private static Reading<PlacedExercise> Read(Source file, string text, ProblemList problems)
    {
        var id = Path.GetFileNameWithoutExtension(file.Path);
        if (!Naming.IsValid(id))
            problems.Add(null, $"The file is called `{id}`, and an exercise's file name is its id", $"Rename it: {Naming.Rule}.");

        if (FrontMatterBlock.Split(text, problems) is not { } block)
            return problems.Fail<PlacedExercise>();
        var fields = FrontMatterReader.Read(block.Yaml, problems);
        var skill = fields.Text("skill");
        var level = fields.Choice("level", Levels);
        var minutes = fields.Whole("minutes", Bounds.Countable);
        var source = fields.Text("source");
        var effort = fields.Optional("effort") is { } band ? EffortText.Read(band, problems) : null;
        var picture = Picture(fields, file, problems);
        fields.Finish();

        if (Document.Read(block.Markdown, problems) is not { } document)
            return problems.Fail<PlacedExercise>();
        var sections = new Sections(document.Sections, "##", problems, document.Deeper);
        var names = new NameScope();
        var givens = GivenReader.Read(sections.Required("Given"), names, problems);
        var problem = Placeholders.Read(document.Opening, names, problems);
        var constraints = sections.Optional("Constraints");
        var stepSections = sections.Named("Step");
        var partSections = sections.Named("Part");
        foreach (var (name, section) in partSections)
            names.Announce(name, section.Line);
        var lists = SharedLists.Read(sections, names, problems);
        var hints = Lists.Lines(sections.Optional("Hints"), problems);
        sections.Finish();

        if (partSections.Count == 0)
            problems.Add(null, "There is no part to answer", "Add a section `## Part: name` with a question and its key.");
        List<WorkingStep> steps =
        [
            .. stepSections.Select(step => StepReader.Read(step.Name, step.Section, names, problems)).OfType<WorkingStep>(),
        ];
        var parts = partSections
            .Select(part => (Part: PartReader.Read(part.Name, part.Section, names, lists, problems)!, part.Section.Line))
            .ToList();
        List<CellFormula> rules =
        [
            .. Lists.Entries(constraints, problems).Select(entry => ReadConstraint(entry.Text, names, problems)).OfType<CellFormula>(),
        ];
        lists.Finish(problems);
        SharedLists.CheckPlaces([.. parts.Select(part => ((Part?)part.Part, part.Line))], problems);
        if (problems.IsEmpty)
            StepReader.FindIdle(stepSections, steps, [.. parts.Select(part => part.Part)], problems);
        if (problems.IsEmpty)
            IdleGivens.Note(givens, block.Markdown, rules, [.. parts.Select(part => part.Part)], steps, names.Places, problems);
        if (problems.IsEmpty)
            Trial.Run(givens, rules, parts, problems);

        return problems.Finish(() =>
            new PlacedExercise(
                new(
                    id,
                    document.Title.Text,
                    skill!.Value.Text,
                    level,
                    minutes,
                    source!.Value.Text,
                    problem,
                    givens,
                    rules,
                    [.. parts.Select(part => part.Part)],
                    hints
                )
                {
                    Effort = effort,
                    Steps = steps,
                    Picture = picture,
                },
                names.Places
            )
        );
    }

    private static Picture? Picture(Fields fields, Source file, ProblemList problems)
    {
        var (name, shows) = (fields.Optional("picture"), fields.Optional("picture shows"));
        if (name is null && shows is { } alone)
            problems.Add(
                alone.Line,
                "`picture shows` says what is to be seen, and there is no picture",
                "Add a line such as `picture: pan.png`, or take this one out."
            );
        if (name is not { } named)
            return null;
        if (shows is null)
            problems.Add(
                named.Line,
                $"The picture `{named.Text}` has no words",
                "Add a line `picture shows:` that says what is to be seen, for whoever cannot see it."
            );
        return PictureReader.One(named, shows?.Text ?? "", file, file.Folder.Folder, problems);
    }

    private static CellFormula? ReadConstraint(Located text, NameScope names, ProblemList problems)
    {
        if (FormulaText.Read(text, "This constraint", names, problems) is not { } written)
            return null;
        var rule = names.WorkedIn(written);
        names.Places.Note(new(Constraint: rule.Text), text.Line);
        return rule;
    }
}
