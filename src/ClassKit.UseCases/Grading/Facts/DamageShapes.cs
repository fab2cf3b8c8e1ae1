using ClassKit.Grading.Findings.Refusals;
using Shape = ClassKit.UseCases.Grading.Facts.FactShape<ClassKit.Grading.Findings.Refusals.Damage>;

namespace ClassKit.UseCases.Grading.Facts;

/// <summary>How what is broken in a workbook stands in grades.json.</summary>
internal static class DamageShapes
{
    public static FactShapes<Damage> All { get; } =
        new(
            Shape.Of<Damage.Archive>("archive"),
            Shape.Of<Damage.Unpacking>("unpacking", (fact, to) => to["part"] = fact.Part, from => new(from.Text("part"))),
            Shape.Of<Damage.Checksum>("checksum", (fact, to) => to["part"] = fact.Part, from => new(from.Text("part"))),
            Shape.Of<Damage.NoXml>("no-xml", (fact, to) => to["part"] = fact.Part, from => new(from.Text("part"))),
            Shape.Of<Damage.BrokenXml>(
                "broken-xml",
                (fact, to) => (to["part"], to["line"], to["column"]) = (fact.Part, fact.Line, fact.Column),
                from => new(from.Text("part"), from.Int("line"), from.Int("column"))
            ),
            Shape.Of<Damage.NoSheets>("no-sheets", (fact, to) => to["part"] = fact.Part, from => new(from.Text("part"))),
            Shape.Of<Damage.NowhereSheet>("nowhere-sheet", (fact, to) => to["sheet"] = fact.Sheet.Text, from => new(from.Quote("sheet"))),
            Shape.Of<Damage.MissingSheet>(
                "missing-sheet",
                (fact, to) => (to["sheet"], to["part"]) = (fact.Sheet.Text, fact.Part),
                from => new(from.Quote("sheet"), from.Text("part"))
            ),
            Shape.Of<Damage.RowNumber>(
                "row-number",
                (fact, to) => (to["sheet"], to["number"]) = (fact.Sheet.Text, fact.Number.Text),
                from => new(from.Quote("sheet"), from.Quote("number"))
            ),
            Shape.Of<Damage.CellName>(
                "cell-name",
                (fact, to) => (to["sheet"], to["address"]) = (fact.Sheet.Text, fact.Address.Text),
                from => new(from.Quote("sheet"), from.Quote("address"))
            ),
            Shape.Of<Damage.BeyondSheet>("beyond-sheet", (fact, to) => to["sheet"] = fact.Sheet.Text, from => new(from.Quote("sheet"))),
            Shape.Of<Damage.SharedFormula>("shared-formula", (fact, to) => to["cell"] = fact.Cell, from => new(from.Text("cell"))),
            Shape.Of<Damage.MissingText>(
                "missing-text",
                (fact, to) => to["at"] = FactFields.Of(fact.Cell),
                from => new(from.Within("at").Cell())
            ),
            Shape.Of<Damage.NoNumber>(
                "no-number",
                (fact, to) =>
                    (to["sheet"], to["cell"], to["text"], to["isDate"]) = (fact.Sheet.Text, fact.Cell, fact.Text.Text, fact.IsDate),
                from => new(from.Quote("sheet"), from.Text("cell"), from.Quote("text"), from.Bool("isDate"))
            )
        );
}
