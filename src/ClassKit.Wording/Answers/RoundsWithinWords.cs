using ClassKit.CellFormulas.Formulas;
using ClassKit.CellFormulas.Syntax;
using ClassKit.Exercises.Authoring;
using ClassKit.Grading.Findings;
using ClassKit.Grading.Results;
using ClassKit.Wording.Mending;

namespace ClassKit.Wording.Answers;

/// <summary>What a student is told whose formula is right but for what it rounds.</summary>
internal static class RoundsWithinWords
{
    /// <summary>What rounds, and what to write.</summary>
    public static string Of(AnswerFinding.RoundsWithin found, AnswerGrade answer)
    {
        var sheet = new SheetTerms(answer.Exercise, found.Cells);
        var (written, right) = (CellFormula.Of("=" + found.Written).Shape, CellFormula.Of("=" + found.Belongs).Shape);
        var what = (written, right) switch
        {
            (CallNode call, CallNode belongs) when Direction(belongs.Name) is { } needed => Direction(call.Name) switch
            {
                null => $"the method rounds with {sheet.Cells(found.Belongs)}",
                var used when used == needed => $"{call.Name} rounds to other digits here than the method does",
                var used => $"{call.Name} rounds {used}, and here you need to round {needed}",
            },
            (CallNode, _) => $"{sheet.Cells(found.Written)} rounds on the way, and that carries through",
            (_, CallNode belongs) when Direction(belongs.Name) is { } needed =>
                $"what comes out is not rounded, and here you need to round {needed}",
            _ => "it is rounded otherwise than the method rounds it",
        };
        var cure = new MendWords(answer.Exercise, answer.Part, answer.Formula ?? "", sheet).InPlace(Flat.Of(written), Flat.Of(right));
        return $"The method is right, but {what}.{cure}";
    }

    /// <summary>The function with which a part's method rounds its result; null where it rounds nothing.</summary>
    public static string? Needed(Part part) => part.Key.Shape is CallNode { Name: var name } && Direction(name) is not null ? name : null;

    private static string? Direction(string function) =>
        function switch
        {
            "ROUNDUP" or "CEILING" => "up",
            "ROUNDDOWN" or "FLOOR" or "INT" or "TRUNC" => "down",
            "ROUND" or "MROUND" => "to the nearest",
            _ => null,
        };
}
