using System.Globalization;
using ClassKit.CellFormulas.Calls;
using ClassKit.CellFormulas.Sheets;
using ClassKit.CellFormulas.Syntax;
using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Tests.Charging;

/// <summary>
/// Makes calls of a function whose arguments grow: from a call of its case file, with one argument, two or all of them replaced by
/// something of a given size.
/// </summary>
internal static class Growth
{
    /// <summary>What may stand for an argument, each as a formula's text for a size.</summary>
    private static readonly Func<int, string>[] Kinds =
    [
        size => $"Data!$A$1:$A${size}", // numbers, all different
        size => $"Data!$B$1:$B${size}", // short texts, all different
        size => $"Data!$C$1:$C${size}", // dates as texts
        size => $"Data!$E$1:$E${size / 10}", // texts, each of a length of its own
        size => $"Long!$A${PlaceOf(size)}", // one long text of one letter
        size => $"Long!$B${PlaceOf(size)}", // one long text of words
        size => $"Long!$C${PlaceOf(size)}", // a long pattern
        size => $"{size * 1_000}", // a large number
        size => $"{size}", // as many as there are rows
    ];

    private const int Numbers = 0;
    private const int Lengths = 3;
    private const int LongLetters = 4;
    private const int LongWords = 5;
    private const int Pattern = 6;
    private const int Count = 8;

    public static IReadOnlyList<int> Sizes { get; } = [500, 8_000];

    private static int PlaceOf(int size) => 1 + Sizes.ToList().IndexOf(size);

    /// <summary>The sheets that the calls refer to.</summary>
    public static IReadOnlyList<SheetSnapshot> Sheets { get; } = [Data(), Long()];

    private static SheetSnapshot Data()
    {
        var cells = new Dictionary<(int, int), CellContent>();
        for (var row = 1; row <= Sizes[^1]; row++)
        {
            var mixed = row * 7_919 % 99_991;
            cells[(row, 1)] = new(CellValue.FromNumber(mixed + 1));
            cells[(row, 2)] = new(CellValue.FromText(string.Create(CultureInfo.InvariantCulture, $"t{mixed}")));
            cells[(row, 3)] = new(
                CellValue.FromText(string.Create(CultureInfo.InvariantCulture, $"{1950 + mixed % 100}-{1 + mixed % 12}-{1 + mixed % 28}"))
            );
            if (row <= Sizes[^1] / 10)
                cells[(row, 5)] = new(CellValue.FromText(new string('a', row) + "z"));
        }

        return new("Data", cells);
    }

    private static SheetSnapshot Long()
    {
        var cells = new Dictionary<(int, int), CellContent>();
        foreach (var size in Sizes)
        {
            cells[(PlaceOf(size), 1)] = new(CellValue.FromText(new string('a', size)));
            cells[(PlaceOf(size), 2)] = new(
                CellValue.FromText(
                    string.Concat(
                        Enumerable.Range(0, size / 6).Select(at => string.Create(CultureInfo.InvariantCulture, $"t{at % 10_000:0000} "))
                    )
                )
            );
            cells[(PlaceOf(size), 3)] = new(CellValue.FromText(string.Concat(Enumerable.Repeat("*a?", size / 3)) + "b"));
        }

        return new("Long", cells);
    }

    /// <summary>The calls, each a formula's text for a size.</summary>
    public static IEnumerable<Func<int, string>> Calls(FunctionRow function, CallNode example)
    {
        var arguments = example.Arguments.Select(argument => CellFormulas.Printing.CanonicalText.OfPart(argument)).ToArray();
        if (arguments.Length == 0)
            yield break;
        string Call(IEnumerable<string> texts) => $"{function.Name}({string.Join(',', texts)})";

        foreach (var kind in Kinds)
        {
            for (var at = 0; at < arguments.Length; at++)
            {
                var one = at;
                yield return size => Call(arguments.Select((text, i) => i == one ? kind(size) : text));
            }

            if (arguments.Length > 1)
                yield return size => Call(arguments.Select(_ => kind(size)));
        }

        // Two arguments at a time cost most: functions take turns with the pairs, but for those with a loop of their own.
        (int, int)[] pairs =
        [
            (0, 0),
            (1, 1),
            (1, 0),
            (LongWords, 1),
            (1, Pattern),
            (LongLetters, Pattern),
            (LongLetters, Lengths),
            (Numbers, Count),
        ];
        foreach (
            var (first, second) in TakenOutChargeTests.HasOwnLoop(function.Name)
                ? pairs
                : Trials.Some(pairs, 2, Trials.Beginning(function.Name))
        )
        {
            for (var at = 0; at < arguments.Length; at++)
            {
                for (var other = 0; other < arguments.Length; other++)
                {
                    var (one, two) = (at, other);
                    if (one != two)
                        yield return size =>
                            Call(
                                arguments.Select(
                                    (text, i) =>
                                        i == one ? Kinds[first](size)
                                        : i == two ? Kinds[second](size)
                                        : text
                                )
                            );
                }
            }
        }
    }
}
