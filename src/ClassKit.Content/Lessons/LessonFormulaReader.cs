using ClassKit.Baking.Cooking;
using ClassKit.Baking.Formulas;
using ClassKit.Baking.GasBudgets;
using ClassKit.Baking.Quantities;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.FrontMatter;
using ClassKit.Content.Ingredients;
using ClassKit.Content.Outline;
using ClassKit.Content.Pictures;
using ClassKit.Content.Quantities;
using ClassKit.Content.Sources;
using ClassKit.Exercises.Authoring;
using ClassKit.Lessons.Authored;
using ClassKit.Lessons.Values;

namespace ClassKit.Content.Lessons;

/// <summary>Reads a lesson's baker's formula: a Markdown file whose name is the formula's id.</summary>
public static class LessonFormulaReader
{
    private static readonly Dictionary<string, Leavening> Leavenings = new()
    {
        ["steam"] = Leavening.Steam,
        ["yeast"] = Leavening.Yeast,
        ["chemical"] = Leavening.Chemical,
        ["none"] = Leavening.None,
    };

    private static readonly Dictionary<string, CrumbStructure> Structures = new()
    {
        ["crumb"] = CrumbStructure.Crumb,
        ["hollow shell"] = CrumbStructure.HollowShell,
        ["pocket"] = CrumbStructure.Pocket,
        ["layers"] = CrumbStructure.Layers,
        ["foam"] = CrumbStructure.Foam,
    };

    /// <summary>In minutes: what rests for less is a step of the class.</summary>
    private const int ShortestRest = 180;

    /// <summary>The formula, or everything that is wrong with its file.</summary>
    public static Reading<LessonFormula> Read(Source source)
    {
        ArgumentNullException.ThrowIfNull(source);
        return source.Once(() => ReadFile(source));
    }

    private static Reading<LessonFormula> ReadFile(Source source)
    {
        var problems = OwnIngredients.ProblemsOf(source);
        return SourceFile.Read(source, problems) is { } text ? Read(source, text, problems) : problems.Fail<LessonFormula>();
    }

    private static Reading<LessonFormula> Read(Source source, string text, ProblemList problems)
    {
        var id = Path.GetFileNameWithoutExtension(source.Path);
        if (!Naming.IsValid(id))
            problems.Add(null, $"The file is called `{id}`, and a formula's file name is its id", $"Rename it: {Naming.Rule}.");

        if (FrontMatterBlock.Split(text, problems) is not { } block)
            return problems.Fail<LessonFormula>();
        var fields = FrontMatterReader.Read(block.Yaml, problems);
        var leavening = fields.Choice("leavening", Leavenings);
        var piece = fields.Text("piece");
        var pieces = fields.Optional("pieces");
        var pieceMass = fields.Quantity("piece mass", Dimensions.Mass, Bounds.AboveZero, default);
        var teamMakes = fields.Has("team makes") ? (int?)fields.Whole("team makes", Bounds.Countable) : null;
        var loss = fields.Quantity("loss", Dimensions.Percent, Bounds.ShareBelowAll, 0);
        var mixTemperature = fields.Has("mix temperature")
            ? (Temperature?)fields.Quantity("mix temperature", Dimensions.Temperature, Dimensions.KitchenDegrees, default)
            : null;
        var bestWithin = fields.Has("best within")
            ? (int?)
                Math.Round(fields.Quantity("best within", Dimensions.Minutes, Dimensions.PartOfPeriod, 0), MidpointRounding.AwayFromZero)
            : null;
        var cutAfter = fields.Has("cut after")
            ? (int?)Math.Round(fields.Quantity("cut after", Dimensions.Minutes, Dimensions.LongRest, 0), MidpointRounding.AwayFromZero)
            : null;
        if (cutAfter is > 0 and < ShortestRest)
            problems.Add(
                fields.LineOf("cut after"),
                $"`cut after` is {cutAfter} min, which a class goes on for",
                "Write what is shorter than 3 h into the step that cools it, and `cut after: 24 h` of what is cut another day."
            );
        CrumbStructure? structure = fields.Has("structure") ? fields.Choice("structure", Structures) : null;
        var gravity =
            fields.Has("specific gravity") && fields.Text("specific gravity") is { } light
                ? Number.Read(light, "`specific gravity`", new Bounds(0.2, true, 1.4), problems)
                : null;
        var build = StarterBuilds.Read(fields, problems);
        var shape = BakingShapes.Read(fields, problems);
        fields.Finish();

        if (Document.Read(block.Markdown, problems) is not { } document)
            return problems.Fail<LessonFormula>();
        var texts = new LessonTexts(block.Markdown, id);
        var pictures = PictureReader.All(block.Markdown, source, source.Folder.Folder, problems);
        var sections = new Sections(document.Sections, "##", problems);
        var table = sections.Required("Formula");
        var lines = FormulaLines.Read(table, problems);
        var method = sections.Required("Method");
        var steps = MethodSteps.Read(method, texts, problems);
        var equipment = BenchTools.Read(sections.Required("Equipment"), problems);
        var surfaces = SurfaceIngredients.Read(sections.Optional(SurfaceIngredients.Heading), texts, equipment, problems);
        var filling = FillingList.Read(sections.Optional(FillingList.Heading), problems);
        var observations = ObservationList.Read(sections.Required("Observations"), texts, problems);
        var cautions = Cautions.Read(sections.Required("Cautions"), texts, problems);
        var traits = TraitList.Read(sections.Required("Leavening"), texts, problems);
        var notes = texts.Read(sections.Optional("Notes"));
        sections.Finish();
        var why = texts.Read(new Located(document.Opening.Prose, document.Title.Line));
        if (document.Opening.Blocks.Count == 0)
            problems.Add(document.Opening.Line, "Nothing says why this bread is in the lesson", "Write a sentence or two below the title.");

        var reading = problems.Finish(() =>
            new LessonFormula(
                new BakersFormula(id, document.Title.Text, leavening, lines),
                piece!.Value.Text,
                pieceMass,
                loss,
                why,
                mixTemperature,
                Heats(steps).First(),
                Heats(steps).Last(),
                steps,
                equipment,
                cautions,
                notes,
                traits!
            )
            {
                BestWithinMinutes = bestWithin,
                CutAfterMinutes = cutAfter,
                TeamMakes = teamMakes,
                Structure = structure,
                SpecificGravity = gravity,
                StarterBuild = build,
                Pieces = pieces?.Text ?? piece.Value.Text + "s",
                Shape =
                    shape is FreeStanding && steps.Where(step => step.IsBaking).All(step => step.Way == CookingWay.Steamer)
                        ? FreeStanding.Steamed
                        : shape,
                Observations = observations,
                Surfaces = [.. surfaces, .. filling],
                Pictures = pictures,
            }
        );
        if (reading.Model is not { } formula)
            return reading;
        // Which values a formula has is known once it is read.
        WhatLeavens.Check(fields.LineOf("leavening"), formula, problems);
        NamedFoods.Check(method, formula, problems);
        FryingFat.Check(method, formula, problems);
        MixingBehindRises.Check(method, formula, problems);
        LeftSoda.Check(table, formula, problems);
        TinsInTheOven.Check(method, formula, problems);
        StarterBuilds.Check(build, fields.LineOf(StarterBuilds.Key), lines, problems);
        MixHeats.Check(fields.LineOf("mix temperature"), method, formula, problems);
        texts.Check([.. ValueNames.Of(formula), .. ValueNames.OfClass], problems);
        return problems.Finish(() => formula);
    }

    /// <summary>What is set, in order; the boiling point at sea level where all that cooks it is as hot as it is.</summary>
    private static IEnumerable<Temperature> Heats(IReadOnlyList<MethodStep> steps) =>
        steps
            .Where(step => step.IsBaking)
            .Select(step => step.Temperature)
            .OfType<Temperature>()
            .DefaultIfEmpty(Temperature.FromCelsius(100));
}
