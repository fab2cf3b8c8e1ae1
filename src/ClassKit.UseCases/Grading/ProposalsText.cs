using System.Globalization;
using System.Text;
using ClassKit.CellFormulas.Formulas;
using ClassKit.Grading.Findings.Edits;
using ClassKit.Grading.Summaries;
using ClassKit.Wording.Answers;

namespace ClassKit.UseCases.Grading;

/// <summary>
/// proposed-misconceptions.md: every wrong turn that a class met and no exercise lists, ready to be put into its exercise.
/// </summary>
internal static class ProposalsText
{
    private const int LongestId = 40;

    /// <summary>The file's text.</summary>
    public static string Write(IReadOnlyList<WrongMethod> methods)
    {
        var text = new StringBuilder(
            """
            # Wrong turns to list

            Several students did each of these alike, and no exercise lists it. Take out those that are not worth a word to the next class, and say the others in
            your own words: two sentences to a student, what it looks like and what sets it right. What stands above a heading is a remark to you. The handbook of
            lessons says how they come into their exercises.

            """.ReplaceLineEndings("\n")
        );
        foreach (var part in methods.GroupBy(method => (Exercise: method.Exercise.Id, Part: method.Part.Id)))
        {
            var taken = part.First().Part.Misconceptions.Select(listed => listed.Id).ToHashSet(StringComparer.Ordinal);
            // The heading stands above every piece: a remark between two of them would belong to the words of the first.
            foreach (var method in part)
                text.Append(CultureInfo.InvariantCulture, $"\n## {part.Key.Exercise}: {part.Key.Part}\n")
                    .Append(Piece(method, Free(IdOf(method), taken)));
        }
        return text.ToString();
    }

    private static string Piece(WrongMethod method, string id) =>
        string.Create(
                CultureInfo.InvariantCulture,
                $"""

                {"Met by " + method.Students.Count} of {method.Asked}. {WrongMethodWords.Asking(method)}

                ### Misconception: {id}

                `{method.Formula}`

                {WrongMethodWords.ToStudents(method)}

                """
            )
            .ReplaceLineEndings("\n");

    private static string Free(string id, HashSet<string> taken)
    {
        var free = id;
        for (var number = 2; !taken.Add(free); number++)
            free = string.Create(CultureInfo.InvariantCulture, $"{id}_{number}");
        return free;
    }

    private static string IdOf(WrongMethod method)
    {
        var id = method.Edits is not [var first, ..]
            ? "another_way"
            : first switch
            {
                KeyEdit.OtherCell => $"{first.Written}_for_{first.Right}",
                KeyEdit.LeftOut { Term: var term } => $"without_{Names(term, "it")}",
                KeyEdit.CountedTwice { Term: var term } => $"{Names(term, "it")}_twice",
                KeyEdit.TakenIn { Term: var term } => $"{Names(term, "number")}_as_well",
                KeyEdit.OtherOperation { Used: var used, Belongs: var belongs } => $"{used}_for_{belongs}".ToLowerInvariant(),
                KeyEdit.TurnedRound => $"{Names(first.Right, "it")}_turned_round",
                KeyEdit.OtherBrackets => "other_brackets",
                KeyEdit.ShareForRest { Written: ['1', '-', ..] } => $"rest_for_{Names(first.Right, "it")}",
                KeyEdit.ShareForRest { Written: ['1', '+', ..] } => $"one_more_than_{Names(first.Right, "it")}",
                KeyEdit.ShareForRest => $"without_rest_of_{Names(first.Right, "it")}",
                KeyEdit.ShareOfOtherEnd => $"{Names(first.Right, "share")}_of_other_end",
                KeyEdit.Inverse => "upside_down",
                KeyEdit.OtherUnit => $"{Names(first.Right, "it")}_in_other_unit",
                KeyEdit.OtherConstant => $"took_{Digits(first.Written)}_for_{Digits(first.Right)}",
                KeyEdit.OtherSign => "other_sign",
                _ => "other_rounding",
            };
        return id.Length <= LongestId ? id : id[..LongestId].TrimEnd('_');
    }

    private static string Digits(string number) => number.Replace('.', '_').Replace("-", "minus_", StringComparison.Ordinal);

    private static string Names(string term, string otherwise) =>
        string.Join('_', CellFormula.Of("=" + term).Names) is { Length: > 0 } names ? names.ToLowerInvariant() : otherwise;
}
