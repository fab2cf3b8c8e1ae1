using ClassKit.BenchSums.Inputs;

namespace ClassKit.BenchSums.Catalogue;

/// <summary>Reads what was typed for a sum: every value, or every problem.</summary>
/// <param name="Values">All values; null if there are problems.</param>
/// <param name="Typed">What each input was taken as, typed or usual, in the order of the sum.</param>
/// <param name="Problems">One for each input that cannot be used.</param>
public sealed record SumReading(
    SumValues? Values,
    IReadOnlyList<KeyValuePair<SumInput, string>> Typed,
    IReadOnlyList<InputProblem> Problems
)
{
    /// <summary>Reads pairs of an input's name and what was typed for it; upper and lower case are alike.</summary>
    public static SumReading Of(BenchSum sum, IReadOnlyList<KeyValuePair<string, string>> typed)
    {
        ArgumentNullException.ThrowIfNull(sum);
        ArgumentNullException.ThrowIfNull(typed);
        List<InputProblem> problems =
        [
            .. typed.Where(pair => Find(sum, pair.Key) is null).Select(pair => Unknown(sum, pair.Key)),
            .. Repeated(typed),
        ];
        Dictionary<string, InputValue> values = [];
        List<KeyValuePair<SumInput, string>> taken = [];
        foreach (var input in sum.Inputs)
        {
            var text = typed.FirstOrDefault(pair => IsOf(input, pair.Key)).Value ?? input.Usual;
            if (text is null)
            {
                if (input.Need == InputNeed.Required)
                    problems.Add(new(input.Id, new("missing", $"{input.Label} is missing.", $"Type {input.Shape}.")));
                continue;
            }
            taken.Add(new(input, text));
            if (input.Read(text).TryGet(out var value, out var why))
                values[input.Id] = value;
            else
                problems.Add(new(input.Id, why));
        }
        return new(problems.Count == 0 ? new(values) : null, taken, problems);
    }

    private static SumInput? Find(BenchSum sum, string name) => sum.Inputs.FirstOrDefault(input => IsOf(input, name));

    private static bool IsOf(SumInput input, string name) => input.Id.Equals(name.Trim(), StringComparison.OrdinalIgnoreCase);

    private static InputProblem Unknown(BenchSum sum, string name) =>
        new(
            name,
            new(
                "unknown-input",
                $"{sum.Title} does not ask for `{name}`.",
                $"It asks for {string.Join(", ", sum.Inputs.Select(input => input.Id))}."
            )
        );

    private static IEnumerable<InputProblem> Repeated(IReadOnlyList<KeyValuePair<string, string>> typed) =>
        typed
            .GroupBy(pair => pair.Key.Trim(), StringComparer.OrdinalIgnoreCase)
            .Where(group => group.Count() > 1)
            .Select(group => new InputProblem(
                group.Key,
                new("typed-twice", $"{group.Key} was typed {group.Count()} times.", "Type it once.")
            ));
}
