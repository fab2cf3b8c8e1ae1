using System.Text.Json.Nodes;
using ClassKit.CellFormulas.Obstacles;
using ClassKit.CellFormulas.Syntax;
using ClassKit.UseCases.Output;
using Shape = ClassKit.UseCases.Grading.Facts.FactShape<ClassKit.CellFormulas.Obstacles.Obstacle>;

namespace ClassKit.UseCases.Grading.Facts;

/// <summary>How what keeps a formula from being evaluated stands in grades.json.</summary>
internal static class ObstacleShapes
{
    public static FactShapes<Obstacle> All { get; } =
        new(
            Shape.Of<Obstacle.TooManySteps>("too-many-steps", (fact, to) => to["most"] = fact.Most, from => new(from.Long("most"))),
            Shape.Of<Obstacle.TooManyStepsTogether>("too-many-steps-together"),
            Shape.Of<Obstacle.ArrayTooLarge>("array-too-large", (fact, to) => to["most"] = fact.Most, from => new(from.Long("most"))),
            Shape.Of<Obstacle.ArrayBeyondSheet>("array-beyond-sheet"),
            Shape.Of<Obstacle.TooManyAreas>("too-many-areas", (fact, to) => to["most"] = fact.Most, from => new(from.Int("most"))),
            Shape.Of<Obstacle.NestedTooDeeply>("nested-too-deeply"),
            Shape.Of<Obstacle.Circle>(
                "circle",
                (fact, to) =>
                    (to["cells"], to["length"], to["iterated"]) = (
                        new JsonArray([.. fact.Cells.Select(cell => (JsonNode)FactFields.Of(cell))]),
                        fact.Length,
                        fact.IsIterated
                    ),
                from => new([.. from.Each("cells").Select(cell => cell.Cell())], from.Int("length"), from.Bool("iterated"))
            ),
            Shape.Of<Obstacle.MayBeMacro>("may-be-macro", (fact, to) => to["name"] = fact.Name, from => new(from.Text("name"))),
            Shape.Of<Obstacle.UnknownFunction>("unknown-function", (fact, to) => to["name"] = fact.Name, from => new(from.Text("name"))),
            Shape.Of<Obstacle.NoFunction>("no-function", (fact, to) => to["name"] = fact.Name, from => new(from.Text("name"))),
            Shape.Of<Obstacle.Arguments>(
                "arguments",
                (fact, to) => (to["function"], to["least"], to["most"], to["given"]) = (fact.Function, fact.Least, fact.Most, fact.Given),
                from => new(from.Text("function"), from.Int("least"), from.IntOrNull("most"), from.Int("given"))
            ),
            Shape.Of<Obstacle.ChangesEachTime>(
                "changes-each-time",
                (fact, to) => to["function"] = fact.Function,
                from => new(from.Text("function"))
            ),
            Shape.Of<Obstacle.NoName>("no-name", (fact, to) => to["name"] = fact.Name, from => new(from.Text("name"))),
            Shape.Of<Obstacle.NameWithoutFormula>(
                "name-without-formula",
                (fact, to) => to["name"] = fact.Name,
                from => new(from.Text("name"))
            ),
            Shape.Of<Obstacle.NameOfItself>("name-of-itself", (fact, to) => to["name"] = fact.Name, from => new(from.Text("name"))),
            Shape.Of<Obstacle.NoSheet>("no-sheet", (fact, to) => to["sheet"] = fact.Sheet, from => new(from.Text("sheet"))),
            Shape.Of<Obstacle.NoCells>("no-cells"),
            Shape.Of<Obstacle.NoTables>("no-tables", (fact, to) => to["text"] = fact.Text, from => new(from.Text("text"))),
            Shape.Of<Obstacle.InNoTable>("in-no-table", (fact, to) => to["text"] = fact.Text, from => new(from.Text("text"))),
            Shape.Of<Obstacle.NoTable>("no-table", (fact, to) => to["table"] = fact.Table, from => new(from.Text("table"))),
            Shape.Of<Obstacle.NoColumn>(
                "no-column",
                (fact, to) => (to["table"], to["text"]) = (fact.Table, fact.Text),
                from => new(from.Text("table"), from.Text("text"))
            ),
            Shape.Of<Obstacle.NoFormula>(
                "no-formula",
                (fact, to) =>
                    (to["at"], to["text"], to["position"], to["length"], to["found"], to["expected"]) = (
                        FactFields.Of(fact.Cell),
                        fact.Error.Text,
                        fact.Error.Position,
                        fact.Error.Length,
                        FactFields.Of(fact.Error.Found),
                        KindWords.Of(fact.Error.Expected)
                    ),
                from =>
                    new(
                        from.Within("at").Cell(),
                        new(
                            from.Text("text"),
                            from.Int("position"),
                            from.Int("length"),
                            from.Found("found"),
                            from.Word<SyntaxExpected>("expected")
                        )
                    )
            ),
            Shape.Of<Obstacle.NotEvaluated>(
                "not-evaluated",
                (fact, to) => (to["what"], to["text"]) = (KindWords.Of(fact.What), fact.Text),
                from => new(from.Word<Construct>("what"), from.Text("text"))
            ),
            Shape.Of<Obstacle.NumberFormat>("number-format", (fact, to) => to["code"] = fact.Code, from => new(from.Text("code"))),
            Shape.Of<Obstacle.NumberedReference>("numbered-reference"),
            Shape.Of<Obstacle.FormulaCriterion>("formula-criterion")
        );
}
