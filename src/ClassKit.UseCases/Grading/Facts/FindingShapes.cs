using System.Text.Json.Nodes;
using ClassKit.CellFormulas.Values;
using ClassKit.Grading.Findings;
using ClassKit.UseCases.Output;
using Shape = ClassKit.UseCases.Grading.Facts.FactShape<ClassKit.Grading.Findings.AnswerFinding>;

namespace ClassKit.UseCases.Grading.Facts;

/// <summary>How what was found of an answer stands in grades.json.</summary>
internal static class FindingShapes
{
    public static FactShapes<AnswerFinding> All { get; } =
        new(
            Shape.Of<AnswerFinding.Right>(
                "right",
                (fact, to) => WriteFormula(fact.Formula, fact.Cells, to),
                from => new() { Formula = FormulaIn(from), Cells = CellsIn(from) }
            ),
            Shape.Of<AnswerFinding.RightTyped>("right-typed"),
            Shape.Of<AnswerFinding.RightInText>("right-in-text"),
            Shape.Of<AnswerFinding.NotFollowing>(
                "not-following",
                (fact, to) => (to["typed"], to["varies"]) = (new JsonArray([.. fact.Typed.Select(Entry)]), fact.Varies),
                from => new([.. from.Each("typed").Select(Given)], from.Bool("varies"))
            ),
            Shape.Of<AnswerFinding.FollowsThrough>(
                "follows-through",
                (fact, to) => (to["from"], to["methodShown"]) = (FactFields.Of(fact.From), fact.MethodShown),
                from => new(from.Parts("from"), from.Bool("methodShown"))
            ),
            Shape.Of<AnswerFinding.Waits>("waits", (fact, to) => to["for"] = FactFields.Of(fact.For), from => new(from.Parts("for"))),
            Shape.Of<AnswerFinding.WrongTurn>(
                "wrong-turn",
                (fact, to) => to["misconception"] = fact.Misconception.Id,
                from => new(from.Names.Misconception(from.Text("misconception")))
            ),
            Shape.Of<AnswerFinding.OtherUnit>("other-unit", (fact, to) => to["unit"] = fact.Unit, from => new(from.Text("unit"))),
            Shape.Of<AnswerFinding.OffByTens>(
                "off-by-tens",
                (fact, to) =>
                {
                    (to["factor"], to["tooLarge"]) = (fact.Factor, fact.IsTooLarge);
                    WriteFormula(fact.Formula, fact.Cells, to);
                },
                from => new(from.Int("factor"), from.Bool("tooLarge")) { Formula = FormulaIn(from), Cells = CellsIn(from) }
            ),
            Shape.Of<AnswerFinding.RoundsAnswer>(
                "rounds-answer",
                (fact, to) => (to["step"], to["direction"]) = (FactFields.Of(fact.Step), KindWords.Of(fact.Direction)),
                from => new(from.Decimal("step"), from.Word<RoundingDirection>("direction"))
            ),
            Shape.Of<AnswerFinding.RoundsEarlier>(
                "rounds-earlier",
                (fact, to) =>
                    (to["earlier"], to["step"], to["direction"]) = (
                        fact.Earlier.Id,
                        FactFields.Of(fact.Step),
                        KindWords.Of(fact.Direction)
                    ),
                from => new(from.Part("earlier"), from.Decimal("step"), from.Word<RoundingDirection>("direction"))
            ),
            Shape.Of<AnswerFinding.RoundsWithin>(
                "rounds-within",
                (fact, to) => (to["written"], to["right"], to["cells"]) = (fact.Written, fact.Belongs, FactFields.Of(fact.Cells)),
                from => new(from.Text("written"), from.Text("right"), from.ByName("cells"))
            ),
            Shape.Of<AnswerFinding.TypedRounded>(
                "typed-rounded",
                (fact, to) => to["decimals"] = fact.Decimals,
                from => new(from.Int("decimals"))
            ),
            Shape.Of<AnswerFinding.TypedFromRounded>(
                "typed-from-rounded",
                (fact, to) => to["decimals"] = fact.Decimals,
                from => new(from.Int("decimals"))
            ),
            Shape.Of<AnswerFinding.NearMiss>(
                "near-miss",
                (fact, to) =>
                    (to["edits"], to["formula"], to["cells"], to["shown"]) = (
                        EditShapes.Of(fact.Edits),
                        fact.Formula,
                        FactFields.Of(fact.Cells),
                        fact.IsShown
                    ),
                from => new(EditShapes.In(from), from.Formula("formula"), from.ByName("cells"), from.Bool("shown"))
            ),
            Shape.Of<AnswerFinding.NotRight>(
                "not-right",
                (fact, to) =>
                {
                    WriteFormula(fact.Formula, fact.Cells, to);
                    WriteUnusable(fact.Lacks, to);
                },
                from =>
                    new()
                    {
                        Formula = FormulaIn(from),
                        Cells = CellsIn(from),
                        Lacks = UnusableIn(from),
                    }
            ),
            Shape.Of<AnswerFinding.ErrorValue>(
                "error-value",
                (fact, to) =>
                {
                    to["error"] = CellErrorText.Of(fact.Error);
                    WriteUnusable(fact.By, to);
                },
                from => new(Error(from.Text("error"))) { By = UnusableIn(from) }
            ),
            Shape.Of<AnswerFinding.Empty>("empty", (fact, to) => to["cell"] = fact.Cell, from => new(from.Text("cell"))),
            Shape.Of<AnswerFinding.NoWorkbook>("no-workbook"),
            Shape.Of<AnswerFinding.NotEvaluated>(
                "not-evaluated",
                (fact, to) => to["why"] = ObstacleShapes.All.Entry(fact.Why),
                from => new(from.Fact("why", ObstacleShapes.All))
            ),
            Shape.Of<AnswerFinding.BrokenFormula>(
                "broken-formula",
                (fact, to) => (to["found"], to["character"]) = (FactFields.Of(fact.Found), fact.Character),
                from => new(from.Found("found"), from.Int("character"))
            ),
            Shape.Of<AnswerFinding.NamesNoCell>(
                "names-no-cell",
                (fact, to) => to["name"] = fact.Name?.Text,
                from => new(from.QuoteOrNull("name"))
            ),
            Shape.Of<AnswerFinding.LacksEqualsSign>(
                "lacks-equals-sign",
                (fact, to) => to["text"] = fact.Text.Text,
                from => new(from.Quote("text"))
            ),
            Shape.Of<AnswerFinding.NoNumber>(
                "no-number",
                (fact, to) =>
                    (to["what"], to["text"], to["length"], to["found"], to["character"]) = (
                        KindWords.Of(fact.Kind),
                        fact.Text.Text,
                        fact.Length,
                        fact.Found.Text,
                        fact.Character
                    ),
                from =>
                    new(
                        from.Word<UnreadableKind>("what"),
                        from.Quote("text"),
                        from.Int("length"),
                        from.Quote("found"),
                        from.Int("character")
                    )
            ),
            Shape.Of<AnswerFinding.NoOption>(
                "no-option",
                (fact, to) => (to["text"], to["options"]) = (fact.Text.Text, fact.Options),
                from => new(from.Quote("text"), from.Int("options"))
            ),
            Shape.Of<AnswerFinding.OptionInWords>(
                "option-in-words",
                (fact, to) => to["text"] = fact.Text.Text,
                from => new(from.Quote("text"))
            ),
            Shape.Of<AnswerFinding.Wrote>("wrote", (fact, to) => to["length"] = fact.Length, from => new(from.Int("length"))),
            Shape.Of<AnswerFinding.MakesText>("makes-text", (fact, to) => to["text"] = fact.Text.Text, from => new(from.Quote("text"))),
            Shape.Of<AnswerFinding.HundredfoldPercent>(
                "hundredfold-percent",
                (fact, to) => to["held"] = fact.Held,
                from => new(from.Number("held"))
            ),
            Shape.Of<AnswerFinding.Impossible>("impossible", (fact, to) => to["value"] = fact.Value, from => new(from.Number("value"))),
            Shape.Of<AnswerFinding.StoodAsText>("stood-as-text")
        );

    private static JsonNode Entry(TypedGiven typed) =>
        new JsonObject
        {
            ["given"] = typed.Given.Id,
            ["dealt"] = FactFields.Of(typed.Dealt),
            ["cell"] = typed.Cell,
        };

    /// <summary>What a formula is over the exercise's names, and where these stand, as far as both are known.</summary>
    private static void WriteFormula(string? formula, IReadOnlyDictionary<string, string>? cells, JsonObject to)
    {
        if (formula is not null)
            to["formula"] = formula;
        if (cells is not null)
            to["cells"] = FactFields.Of(cells);
    }

    private static string? FormulaIn(FactReader from) => from.TextOrNull("formula") is null ? null : from.Formula("formula");

    private static IReadOnlyDictionary<string, string>? CellsIn(FactReader from) => from.Has("cells") ? from.ByName("cells") : null;

    private static TypedGiven Given(FactReader from) => new(from.Names.Given(from.Text("given")), from.Decimal("dealt"), from.Text("cell"));

    private static void WriteUnusable(UnusableCell? cell, JsonObject to)
    {
        if (cell is null)
            return;
        (to["cell"], to["holds"]) = (cell.Cell, KindWords.Of(cell.Kind));
        if (cell.Text is { } text)
            to["text"] = text.Text;
        if (cell.Beside is { } beside)
            to["beside"] = beside;
    }

    private static UnusableCell? UnusableIn(FactReader from) =>
        from.Has("holds")
            ? new(from.Text("cell"), from.Word<UnusableCellKind>("holds"), from.QuoteOrNull("text"), from.TextOrNull("beside"))
            : null;

    private static CellError Error(string text) =>
        CellErrorText.TryParse(text, out var error) ? error : throw new FormatException($"“{text}” is no error value such as #DIV/0!");
}
