using System.Buffers;
using System.Globalization;
using System.Text;
using ClassKit.CellFormulas.Sheets;
using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Tests.Differential;

/// <summary>Makes formulas and the sheets that they look at, the same ones for the same seed.</summary>
internal sealed class RandomFormulas(int seed)
{
    public const int Rows = 8;

    private static readonly string[] Words = ["rye", "Wheat", "spelt flour", "", "Yeast", "steam", "é", "a-b-c"];
    private static readonly string[] Criteria = ["\">2\"", "\"<=10\"", "\"<>3\"", "3", "\"r*\"", "\"=5\"", "\">=\"&2.5", "\"steam\""];
    private static readonly string[] Formats =
    [
        "\"0\"",
        "\"0.00\"",
        "\"#,##0.0\"",
        "\"0%\"",
        "\"0.0%\"",
        "\"000.0\"",
        "\"0.00E+00\"",
        "\"#,##0;(#,##0)\"",
    ];

    // Not written out: LibreOffice 7.4 falls over `TRUNC(+#VALUE!,3)` and its like.
    private static readonly string[] Errors = ["NA()", "(1/0)", "SQRT(-1)", "ABS(\"x\")"];
    private static readonly string[] Units =
    [
        "\"m\",\"ft\"",
        "\"C\",\"F\"",
        "\"l\",\"gal\"",
        "\"hr\",\"sec\"",
        "\"kg\",\"g\"",
        "\"in\",\"cm\"",
        "\"cup\",\"tsp\"",
    ];

    private static readonly SearchValues<char> OperatorSigns = SearchValues.Create("+-*/^&=<>%");

    private readonly Random _random = new(seed);

    /// <summary>Numbers in A and B, texts in C, everything in D.</summary>
    public void Fill(Dictionary<(int Row, int Column), CellContent> cells)
    {
        for (var row = 1; row <= Rows; row++)
        {
            cells[(row, 1)] = new(CellValue.FromNumber(_random.Next(-5, 20)));
            cells[(row, 2)] = new(CellValue.FromNumber(Math.Round(_random.NextDouble() * 40, 2, MidpointRounding.AwayFromZero)));
            if (Words[_random.Next(Words.Length)] is { Length: > 0 } word)
                cells[(row, 3)] = new(CellValue.FromText(word));
            if (_random.Next(4) == 0)
                continue;
            cells[(row, 4)] = new(_random.Next(2) == 0 ? CellValue.FromNumber(_random.Next(6)) : CellValue.FromText(Words[0]));
        }
    }

    public string Next(int depth) =>
        _random.Next(10) switch
        {
            < 6 => Number(depth),
            < 8 => Text(depth),
            _ => Logical(depth),
        };

    public string NextArray() => Shape(FormulaTemplates.Arrays, 2);

    public string NextIntersection() => Shape(FormulaTemplates.Intersections, 2);

    private string Number(int depth)
    {
        if (_random.Next(60) == 0)
            return Errors[_random.Next(Errors.Length)];
        if (depth > 0 && _random.Next(8) > 0)
            return Shape(FormulaTemplates.Numbers, depth);
        return _random.Next(3) switch
        {
            0 => Cell(),
            1 => _random.Next(0, 30).ToString(CultureInfo.InvariantCulture),
            _ => (_random.Next(1, 4000) / 100.0).ToString(CultureInfo.InvariantCulture),
        };
    }

    private string Text(int depth) =>
        depth > 0 && _random.Next(8) > 0 ? Shape(FormulaTemplates.Texts, depth)
        : _random.Next(2) == 0 ? $"C{_random.Next(1, Rows + 1)}"
        : $"\"{Words[_random.Next(Words.Length)]}\"";

    private string Logical(int depth) =>
        depth > 0 ? Shape(FormulaTemplates.Logicals, depth)
        : _random.Next(2) == 0 ? "TRUE"
        : "FALSE";

    private string Cell() => $"{"AB"[_random.Next(2)]}{_random.Next(1, Rows + 1)}";

    private string Shape(string[] shapes, int depth)
    {
        var shape = shapes[_random.Next(shapes.Length)];
        var text = new StringBuilder();
        var (first, second) = (_random.Next(1, 4), _random.Next(5, Rows + 1));
        for (var at = 0; at < shape.Length; at++)
        {
            if (
                shape[at] == '{'
                && shape[at + 1] != '{'
                && (at == 0 || shape[at - 1] != '{')
                && at + 2 < shape.Length
                && shape[at + 2] == '}'
            )
            {
                text.Append(Part(shape[at + 1], depth - 1, first, second));
                at += 2;
            }
            else if ((shape[at] is '{' or '}') && at + 1 < shape.Length && shape[at + 1] == shape[at])
            {
                text.Append(shape[at++]);
            }
            else
            {
                text.Append(shape[at]);
            }
        }

        return text.ToString();
    }

    private string Part(char kind, int depth, int first, int last) =>
        kind switch
        {
            'N' => Operand(Number(depth)),
            'P' => _random.Next(3) == 0
                ? $"(1+ABS({Number(depth)}))"
                : (_random.Next(1, 400) / 20.0).ToString(CultureInfo.InvariantCulture),
            'I' => _random.Next(0, 6).ToString(CultureInfo.InvariantCulture),
            'T' => Operand(Text(depth)),
            'L' => Logical(depth),
            'C' => Cell(),
            'R' => $"A{first}:A{last}",
            'S' => $"B{first}:B{last}",
            'X' => $"{"ABCD"[_random.Next(4)]}{first}:{"D"}{last}",
            'K' => Criteria[_random.Next(Criteria.Length)],
            'D' => _random.Next(36526, 47000).ToString(CultureInfo.InvariantCulture),
            'F' => (_random.Next(1, 100) / 100.0).ToString(CultureInfo.InvariantCulture),
            'M' => Formats[_random.Next(Formats.Length)],
            _ => Units[_random.Next(Units.Length)],
        };

    // Sometimes bare, so that precedence is tried as well.
    private string Operand(string text) =>
        _random.Next(3) == 0 ? text
        : text.AsSpan().ContainsAny(OperatorSigns) ? $"({text})"
        : text;
}
