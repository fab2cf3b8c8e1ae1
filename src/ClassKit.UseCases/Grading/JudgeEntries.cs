using System.Globalization;
using ClassKit.Grading.Results;

namespace ClassKit.UseCases.Grading;

/// <summary>How grades.json holds what decided the grades: a set of inputs and a choice of them are a line each.</summary>
internal static class JudgeEntries
{
    /// <summary>What stands once for the class.</summary>
    public static GradesDocument.JudgeEntry Of(JudgeRecord record) => new(record.Version, record.Program, [.. record.Pools.Select(Of)]);

    /// <summary>What stands with every student, by the student's id.</summary>
    public static ILookup<string, GradesDocument.UsedEntry> Used(JudgeRecord? record) =>
        (record?.Choices ?? []).ToLookup(
            choice => choice.Student,
            choice => new GradesDocument.UsedEntry(choice.Exercise, string.Join(' ', choice.Places))
        );

    /// <summary>The record, from what stands in the file.</summary>
    /// <exception cref="FormatException">Something in it is no record.</exception>
    public static JudgeRecord? Model(GradesDocument document) =>
        document.Judge is not { } judge
            ? null
            : new(judge.Version, [.. judge.Fresh.Select(Model)])
            {
                Program = judge.Program,
                Choices =
                [
                    .. document.Students.SelectMany(student =>
                        (student.Fresh ?? []).Select(used => new JudgeRecord.Choice(
                            student.Id,
                            used.Exercise,
                            [.. used.Used.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(Place)]
                        ))
                    ),
                ],
            };

    private static GradesDocument.PoolEntry Of(JudgeRecord.Pool pool)
    {
        IReadOnlyList<string> names = pool.Inputs is [var first, ..] ? [.. first.Keys] : [];
        return new(
            pool.Exercise,
            string.Join(' ', names),
            [
                .. pool.Inputs.Select(inputs =>
                    string.Join(
                        ' ',
                        names.Select(name => inputs[name].ToString("0.############################", CultureInfo.InvariantCulture))
                    )
                ),
            ]
        );
    }

    private static JudgeRecord.Pool Model(GradesDocument.PoolEntry entry)
    {
        var names = entry.Givens.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        if (names.Distinct().Count() != names.Length)
            throw new FormatException($"A given of {entry.Exercise} is named twice in “{entry.Givens}”");
        return new(entry.Exercise, [.. entry.Inputs.Select(Inputs)]);

        IReadOnlyDictionary<string, decimal> Inputs(string line)
        {
            var values = line.Split(' ', StringSplitOptions.RemoveEmptyEntries);
            return values.Length == names.Length
                ? names.Zip(values).ToDictionary(pair => pair.First, pair => Number(pair.Second))
                : throw new FormatException($"“{line}” holds {values.Length} numbers; expected one for each of “{entry.Givens}”");
        }
    }

    private static decimal Number(string text) =>
        decimal.TryParse(text, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number)
            ? number
            : throw new FormatException($"“{text}” is no number such as 12.5");

    private static int Place(string text) =>
        int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var place)
            ? place
            : throw new FormatException($"“{text}” is no place in a list, counted from 0");
}
