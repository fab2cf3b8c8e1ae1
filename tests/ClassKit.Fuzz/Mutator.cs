using System.Globalization;
using System.Text;

namespace ClassKit.Fuzz;

/// <summary>Changes formulas as no person would: splices, doubles, nests, cuts off, and puts in what is rare.</summary>
internal sealed class Mutator(string[] seeds, int seed)
{
    private static readonly string[] Rare =
    [
        "1E+308",
        "-1E-308",
        "9007199254740993",
        "1E15",
        "0.1",
        "-0",
        "4294967296",
        "2147483648",
        "1048577",
        "XFD1048576",
        "$A$1",
        "A:XFD",
        "1:1048576",
        "A1:XFD1048576",
        "A1:A8",
        "(A1,B2)",
        "A1:A3 A2:B2",
        "TRUE",
        "#N/A",
        "#REF!",
        "#SPILL!",
        "\"\"",
        "\"" + "\ud83c\udf5e" + "\"",
        "\ud83c",
        "\u0301",
        "\u200f",
        "\u0000",
        "\"2024-02-30\"",
        "\"1e999\"",
        "{1,2;3,4}",
        "{1,\"a\";TRUE,#N/A}",
        "'It''s'!A1",
        "Sheet1!A1",
        "[1]!x",
        "r",
        "x",
        "_xlfn.",
        "_xlpm.x",
        "LET(x,1,x)",
        "A1#",
        "@A1:A8",
        "%",
        "%%%%",
        "^",
        "--",
        "+-+",
        "<>",
        "&",
        "((",
        "))",
        ",",
        ",,",
        ";",
        ":",
        " ",
        "!",
        "'",
        "\"",
        "{",
        "}",
        "[",
        "]",
        "#",
        "~*",
        "*?",
        "\\",
        "\t\n",
        "×",
        "−",
    ];

    private static readonly string[] Wrappers =
    [
        "({0})",
        "-{0}",
        "{0}%",
        "SUM({0})",
        "IF({0},{0},{0})",
        "IFERROR({0},0)",
        "LET(x,{0},x)",
        "INDEX({0},1)",
        "TEXT({0},\"0.0\")",
        "ROUND({0},{0})",
        "SORT({0})",
        "SUMPRODUCT({0})",
        "{0}:{0}",
        "@{0}",
        "REPT({0},99)",
        "SEQUENCE({0},{0})",
        "{0}&{0}",
        "{0}^{0}",
    ];

    private readonly Random _random = new(seed);

    /// <summary>A formula, mostly no longer one.</summary>
    public string Formula()
    {
        var text = Seed();
        for (var change = _random.Next(1, 6); change > 0 && text.Length < 20_000; change--)
            text = Change(text);
        return text;
    }

    /// <summary>One of several.</summary>
    public T Pick<T>(IReadOnlyList<T> of) => of[_random.Next(of.Count)];

    public int Below(int end) => _random.Next(end);

    private string Seed() => seeds[_random.Next(seeds.Length)];

    private string Change(string text)
    {
        var (from, to) = Cut(text);
        return _random.Next(12) switch
        {
            0 => text[..from] + text[to..],
            1 => text[..to] + text[from..],
            2 => text[..from] + Rare[_random.Next(Rare.Length)] + text[from..],
            3 => text[..from] + Rare[_random.Next(Rare.Length)] + text[to..],
            4 => Splice(text, from, to),
            5 => string.Format(CultureInfo.InvariantCulture, Wrappers[_random.Next(Wrappers.Length)], text),
            6 => Nested(text),
            7 => text[..from] + (char)_random.Next(_random.Next(2) == 0 ? 128 : 65536) + text[to..],
            8 => text + Pick(["+", "*", "&", "=", ",", " ", ":", "^"]) + Seed(),
            9 => Number(text),
            10 => text.Replace("A1", Rare[_random.Next(Rare.Length)], StringComparison.Ordinal),
            _ => text[..from],
        };
    }

    private (int From, int To) Cut(string text)
    {
        var (a, b) = (_random.Next(text.Length + 1), _random.Next(text.Length + 1));
        return (Math.Min(a, b), Math.Max(a, b));
    }

    private string Splice(string text, int from, int to)
    {
        var other = Seed();
        var (start, end) = Cut(other);
        return text[..from] + other[start..end] + text[to..];
    }

    private string Nested(string text)
    {
        var times = 1 << _random.Next(1, 10);
        var (open, close) = Pick<(string, string)>([
            ("(", ")"),
            ("-", ""),
            ("", "%"),
            ("ABS(", ")"),
            ("1+", ""),
            ("IF(1,", ")"),
            ("{", "}"),
            ("[", "]"),
            ("'", ""),
            ("LET(x,1,", ")"),
        ]);
        return new StringBuilder().Insert(0, open, times).Append(text).Append(new StringBuilder().Insert(0, close, times)).ToString();
    }

    private string Number(string text)
    {
        var at = text.IndexOfAny(['0', '1', '2', '3', '4', '5', '6', '7', '8', '9']);
        return at < 0
            ? text
            : text[..at]
                + Pick(["0", "-1", "1E+308", "255", "256", "32768", "1048576", "99999999999999999999", "0.5", "1E-300"])
                + text[(at + 1)..];
    }
}
