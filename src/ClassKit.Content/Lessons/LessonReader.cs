using ClassKit.Content.Diagnostics;
using ClassKit.Content.Exercises;
using ClassKit.Content.FrontMatter;
using ClassKit.Content.Ingredients;
using ClassKit.Content.Outline;
using ClassKit.Content.Pictures;
using ClassKit.Content.Quantities;
using ClassKit.Content.Recognition;
using ClassKit.Content.Rubrics;
using ClassKit.Content.Sources;
using ClassKit.Exercises.Authoring;
using ClassKit.Lessons.Authored;
using ClassKit.Lessons.Values;

namespace ClassKit.Content.Lessons;

/// <summary>Reads a lesson: a folder with <c>lesson.md</c>, which links to its formulas, exercises and rubrics.</summary>
public static class LessonReader
{
    /// <summary>The file that makes a folder a lesson.</summary>
    public const string FileName = "lesson.md";

    private static readonly string[] FailureColumns = ["Sign", "Cause", "Cure"];

    /// <summary>The lesson, or everything that is wrong with it and with the files it links to.</summary>
    /// <param name="source">The lesson's folder, or the <c>lesson.md</c> in it.</param>
    public static Reading<Lesson> Read(Source source)
    {
        ArgumentNullException.ThrowIfNull(source);
        return source.Once(() => ReadFile(source));
    }

    private static Reading<Lesson> ReadFile(Source source)
    {
        var folder =
            Path.GetFileName(source.Path) == FileName && !source.IsFolder ? source.At(Path.GetDirectoryName(source.Path)!) : source;
        if (!folder.IsFolder)
            return new(
                null,
                [new(folder.Shown, null, "There is no such folder", Nearby.Folders(folder) ?? "Name the folder of a lesson.")]
            );
        var file = folder.In(FileName);
        var problems = OwnIngredients.ProblemsOf(file);
        return SourceFile.Read(file, problems) is { } text ? Read(folder.Name, file, text, problems) : problems.Fail<Lesson>();
    }

    /// <summary>The files of a lesson's exercises, in the order of the lesson; empty if it cannot be read.</summary>
    public static IReadOnlyList<string> ExerciseFiles(Source folder)
    {
        ArgumentNullException.ThrowIfNull(folder);
        var file = folder.In(FileName);
        var problems = new ProblemList(file.Shown);
        if (
            SourceFile.Read(file, problems) is not { } text
            || FrontMatterBlock.Split(text, problems) is not { } block
            || Document.Read(block.Markdown, problems) is not { } document
        )
            return [];
        return
        [
            .. LinkList
                .Read(new Sections(document.Sections, "##", problems).Optional("Exercises"), "exercises", file, problems)
                .Select(link => link.Path),
        ];
    }

    private static Reading<Lesson> Read(string id, Source file, string text, ProblemList problems)
    {
        if (FrontMatterBlock.Split(text, problems) is not { } block)
            return problems.Fail<Lesson>();
        var fields = FrontMatterReader.Read(block.Yaml, problems);
        var period = (int)
            Math.Round(fields.Quantity("period", Dimensions.Minutes, Dimensions.Period, int.MaxValue / 2), MidpointRounding.AwayFromZero);
        var files = new LinkedFiles(file, problems);
        var pictures = PictureReader.All(block.Markdown, file, file.Folder, problems);
        var marking = files.One(fields.Text("marking"), ContentKind.MarkingScheme, MarkingSchemeReader.Read);
        var rubric = files.One(fields.Text("bench rubric"), ContentKind.PracticalRubric, PracticalRubricReader.Read);
        var aside = new SetAside(
            Minutes(fields, "setup", SetAside.Usual.SetupMinutes),
            Minutes(fields, "tasting", SetAside.Usual.TastingMinutes),
            Minutes(fields, "cleanup", SetAside.Usual.CleanupMinutes)
        );
        if (aside.SetupMinutes + aside.TastingMinutes + aside.CleanupMinutes >= period)
            problems.Doubt(
                fields.LineOf("period"),
                $"Beginning, tasting and cleaning up take {aside.SetupMinutes + aside.TastingMinutes + aside.CleanupMinutes} min, and the lesson {period} min",
                "Give the lesson more time, or write less for `setup`, `tasting` or `cleanup`."
            );
        fields.Finish();

        if (Document.Read(block.Markdown, problems) is not { } document)
            return problems.Fail<Lesson>();
        if (document.Opening.Blocks.Count == 0)
            problems.Add(document.Opening.Line, "The lesson has no summary", "Write a sentence or two below the title.");
        var texts = new LessonTexts(block.Markdown, formulaId: null);
        var summary = texts.Read(new Located(document.Opening.Prose, document.Title.Line));
        var sections = new Sections(document.Sections, "##", problems, document.Deeper);
        var objectives = texts.Read(Lists.Entries(sections.Required("Objectives"), problems).Select(entry => entry.Text));
        var knowledge = texts.Read(Lists.Entries(sections.Required("Prior knowledge"), problems).Select(entry => entry.Text));
        var beforeFormulas = problems.Count;
        var formulaLinks = LinkList.Read(sections.Required("Formulas"), "formulas", file, problems);
        var formulas = files.All(formulaLinks, ContentKind.Formula, LessonFormulaReader.Read, formula => formula.Formula.Title);
        var allRead = formulas.Count == formulaLinks.Count && problems.Count == beforeFormulas;
        var exercises = files.All(
            LinkList.Read(sections.Optional("Exercises"), "exercises", file, problems),
            ContentKind.Exercise,
            ExerciseReader.Read,
            exercise => exercise.Title
        );
        var vocabulary = Lists
            .Entries(sections.Required("Vocabulary"), problems)
            .Select(entry => NamedItem.Read(entry.Text, "- **Proof.** The last rise before baking.", problems))
            .OfType<NamedItem>()
            .Select(item => new Term(item.Name.Text, texts.Read(item.Text)))
            .ToList();
        var cautions = Cautions.Read(sections.Required("Cautions"), texts, problems);
        var points = TalkingPoints.Read(sections.Required("Talking points"), texts, formulas, allRead, problems);
        var shown = sections.Optional("Demonstrations");
        var demonstrations = DemonstrationList.Read(shown, texts, formulas, allRead, problems);
        var series = SeriesList.Read(sections.Optional("Series"), texts, formulas, allRead, problems);
        var questions = Questions.Read(sections.Required("Questions"), texts, problems);
        var failures = Tables
            .Rows(sections.Required("Failures"), FailureColumns, problems)
            .Select(row => new Failure(Cell(row, "Sign"), Cell(row, "Cause"), Cell(row, "Cure")))
            .ToList();
        var handout = texts.Read(sections.Required("For students"));
        var guide = texts.Read(sections.Required("For the instructor"));
        sections.Finish();
        if (allRead)
        {
            NamedFoods.Check(shown, formulas, problems);
            texts.Check(ValueNames.Of(formulas), problems);
        }

        var reading = problems.Finish(() =>
            files.Problems.Count > 0
                ? null!
                : new Lesson(
                    id,
                    document.Title.Text,
                    summary,
                    period,
                    objectives,
                    knowledge,
                    vocabulary,
                    cautions,
                    points,
                    questions,
                    failures,
                    formulas,
                    exercises,
                    marking!,
                    rubric!,
                    handout,
                    guide
                )
                {
                    Demonstrations = demonstrations,
                    Series = series,
                    SetAside = aside,
                    Pictures = pictures,
                }
        );
        return files.With(reading);

        TextTemplate Cell(TableRow row, string column) => row.Required(column, problems) is { } cell ? texts.Read(cell) : "";
    }

    /// <summary>A key that may be left out.</summary>
    private static int Minutes(Fields fields, string key, int usual) =>
        fields.Has(key)
            ? (int)Math.Round(fields.Quantity(key, Dimensions.Minutes, Dimensions.PartOfPeriod, usual), MidpointRounding.AwayFromZero)
            : usual;
}
