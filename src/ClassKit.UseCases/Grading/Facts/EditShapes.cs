using System.Text.Json.Nodes;
using ClassKit.CellFormulas.Syntax;
using ClassKit.Grading.Findings.Edits;
using ClassKit.UseCases.Output;
using Shape = ClassKit.UseCases.Grading.Facts.FactShape<ClassKit.Grading.Findings.Edits.KeyEdit>;

namespace ClassKit.UseCases.Grading.Facts;

/// <summary>How what is otherwise in a formula than in the key stands in grades.json.</summary>
internal static class EditShapes
{
    public static FactShapes<KeyEdit> All { get; } =
        new(
            Shape.Of<KeyEdit.OtherOperation>(
                "other-operation",
                (edit, to) => (to["belongs"], to["used"]) = (KindWords.Of(edit.Belongs), KindWords.Of(edit.Used)),
                from => new(Right(from), Written(from), from.Word<BinaryOperator>("belongs"), from.Word<BinaryOperator>("used"))
            ),
            Shape.Of<KeyEdit.TurnedRound>(
                "turned-round",
                (edit, to) => to["operation"] = KindWords.Of(edit.Operation),
                from => new(Right(from), Written(from), Operation(from))
            ),
            Shape.Of<KeyEdit.LeftOut>(
                "left-out",
                (edit, to) => (to["term"], to["operation"]) = (edit.Term, KindWords.Of(edit.Operation)),
                from => new(Right(from), Written(from), from.Expression("term"), Operation(from))
            ),
            Shape.Of<KeyEdit.CountedTwice>(
                "counted-twice",
                (edit, to) => to["term"] = edit.Term,
                from => new(Right(from), Written(from), from.Expression("term"))
            ),
            Shape.Of<KeyEdit.TakenIn>(
                "taken-in",
                (edit, to) => (to["term"], to["operation"]) = (edit.Term, KindWords.Of(edit.Operation)),
                from => new(Right(from), Written(from), from.Expression("term"), Operation(from))
            ),
            Shape.Of<KeyEdit.OtherBrackets>("other-brackets", (_, _) => { }, from => new(Right(from), Written(from))),
            Shape.Of<KeyEdit.OtherCell>(
                "other-cell",
                (edit, to) => to["whole"] = edit.IsWhole,
                from => new(Right(from), Written(from), from.Bool("whole"))
            ),
            Shape.Of<KeyEdit.ShareForRest>("share-for-rest", (_, _) => { }, from => new(Right(from), Written(from))),
            Shape.Of<KeyEdit.ShareOfOtherEnd>("share-of-other-end", (_, _) => { }, from => new(Right(from), Written(from))),
            Shape.Of<KeyEdit.Inverse>("inverse", (_, _) => { }, from => new(Right(from), Written(from))),
            Shape.Of<KeyEdit.OtherUnit>(
                "other-unit",
                (edit, to) => (to["from"], to["to"]) = (edit.From, edit.To),
                from => new(Right(from), Written(from), from.Text("from"), from.Text("to"))
            ),
            Shape.Of<KeyEdit.OtherConstant>("other-constant", (_, _) => { }, from => new(Right(from), Written(from))),
            Shape.Of<KeyEdit.OtherSign>("other-sign", (_, _) => { }, from => new(Right(from), Written(from))),
            Shape.Of<KeyEdit.OtherRounding>("other-rounding", (_, _) => { }, from => new(Right(from), Written(from)))
        );

    public static JsonArray Of(IReadOnlyList<KeyEdit> edits) => [.. edits.Select(Entry)];

    public static IReadOnlyList<KeyEdit> In(FactReader from) =>
        Each(from) is { Count: > 0 } edits ? edits : throw new FormatException("“edits” is empty, and a near miss has at least one");

    private static IReadOnlyList<KeyEdit> Each(FactReader from) =>
        [
            .. from.Each("edits")
                .Select(edit => All.Model(edit) ?? throw new FormatException($"“{edit.Text("kind")}” is no edit that this version knows")),
        ];

    private static JsonObject Entry(KeyEdit edit)
    {
        var entry = All.Entry(edit);
        (entry["right"], entry["written"]) = (edit.Right, edit.Written);
        return entry;
    }

    private static string Right(FactReader from) => from.Expression("right");

    private static string Written(FactReader from) => from.Expression("written");

    private static BinaryOperator Operation(FactReader from) => from.Word<BinaryOperator>("operation");
}
