using System.Text;
using ClassKit.CellFormulas.Calls;
using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Functions;

/// <summary>Numbers written to other bases, in Roman numerals, and taken bit by bit (OpenFormula 1.3, 6.19 and 6.6).</summary>
internal static class Bases
{
    private const double BitLimit = 281474976710656; // 2^48
    private const int Digits = 10;

    private static readonly (int Value, string Sign)[] Numerals =
    [
        (1000, "M"),
        (900, "CM"),
        (500, "D"),
        (400, "CD"),
        (100, "C"),
        (90, "XC"),
        (50, "L"),
        (40, "XL"),
        (10, "X"),
        (9, "IX"),
        (5, "V"),
        (4, "IV"),
        (1, "I"),
    ];

    public static readonly FunctionRow[] Rows =
    [
        .. Between("BIN", 2),
        .. Between("OCT", 8),
        .. Between("HEX", 16),
        new("DEC2BIN", 1, 2, "VV", call => Written(call, call.Number(0), 2)),
        new("DEC2OCT", 1, 2, "VV", call => Written(call, call.Number(0), 8)),
        new("DEC2HEX", 1, 2, "VV", call => Written(call, call.Number(0), 16)),
        new("BASE", 2, 3, "VVV", Base),
        new("DECIMAL", 2, 2, "VV", Decimal),
        new("ROMAN", 1, 2, "VV", Roman),
        new("ARABIC", 1, 1, "V", Arabic),
        new("BITAND", 2, 2, "VV", call => Bits(call, (a, b) => a & b)),
        new("BITOR", 2, 2, "VV", call => Bits(call, (a, b) => a | b)),
        new("BITXOR", 2, 2, "VV", call => Bits(call, (a, b) => a ^ b)),
        new("BITLSHIFT", 2, 2, "VV", call => Shifted(call, 1)),
        new("BITRSHIFT", 2, 2, "VV", call => Shifted(call, -1)),
    ];

    private static IEnumerable<FunctionRow> Between(string name, int from)
    {
        yield return new($"{name}2DEC", 1, 1, "V", call => Read(call, from));
        foreach (var (other, to) in new[] { ("BIN", 2), ("OCT", 8), ("HEX", 16) })
        {
            if (to != from)
                yield return new($"{name}2{other}", 1, 2, "VV", call =>
                    Read(call, from) is { IsError: false } number ? Written(call, number.Scalar.Number, to) : Read(call, from)
                );
        }
    }

    /// <summary>Up to ten digits, the first of ten the sign.</summary>
    private static FormulaValue Read(Call call, int radix)
    {
        var text = call.Text(0).Trim();
        if (call.Failed)
            return call.Error!.Value;
        if (text.Length > Digits)
            return CellError.Number;
        var number = 0.0;
        foreach (var sign in text)
        {
            if (Digit(sign) is not { } digit || digit >= radix)
                return CellError.Number;
            number = number * radix + digit;
        }

        var range = Math.Pow(radix, Digits);
        return text.Length == Digits && number >= range / 2 ? number - range : number;
    }

    private static FormulaValue Written(Call call, double number, int radix)
    {
        var places = call.Integer(1, 0);
        if (call.Failed)
            return call.Error!.Value;
        number = Numbers.Truncate(number);
        var range = Math.Pow(radix, Digits);
        if (number < -range / 2 || number >= range / 2 || (!call.IsMissing(1) && places is < 1 or > Digits))
            return CellError.Number;
        if (number < 0)
            return Text(number + range, radix);
        var text = Text(number, radix);
        return !call.IsMissing(1) && text.Length > places ? CellError.Number : text.PadLeft(places, '0');
    }

    private static string Text(double number, int radix)
    {
        var text = new StringBuilder();
        do
        {
            text.Insert(0, "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ"[(int)(number % radix)]);
            number = Math.Floor(number / radix);
        } while (number > 0);
        return text.ToString();
    }

    private static int? Digit(char sign) =>
        char.ToUpperInvariant(sign) switch
        {
            >= '0' and <= '9' and var digit => digit - '0',
            >= 'A' and <= 'Z' and var letter => letter - 'A' + 10,
            _ => null,
        };

    private static FormulaValue Base(Call call)
    {
        var (number, radix, places) = (Numbers.Truncate(call.Number(0)), call.Integer(1), call.Integer(2, 0));
        return number is < 0 or >= 9007199254740992 || radix is < 2 or > 36 || places is < 0 or > 255
            ? CellError.Number
            : Text(number, radix).PadLeft(places, '0');
    }

    private static FormulaValue Decimal(Call call)
    {
        var (text, radix) = (call.Text(0).Trim(), call.Integer(1));
        if (radix is < 2 or > 36 || text.Length > 255)
            return CellError.Number;
        var number = 0.0;
        foreach (var sign in text)
        {
            if (Digit(sign) is not { } digit || digit >= radix)
                return CellError.Number;
            number = number * radix + digit;
        }

        return number;
    }

    /// <summary>
    /// Form 0 is the classic one; up to form 4, ever more steps may be skipped in taking a smaller numeral from a larger: 499 is CDXCIX,
    /// LDVLIV, XDIX, VDIV, ID.
    /// </summary>
    private static FormulaValue Roman(Call call)
    {
        var number = call.Integer(0);
        var form =
            call.IsMissing(1) ? 0
            : call.Any(1) is { Kind: CellValueKind.Logical } classic ? (classic.Logical ? 0 : 4)
            : call.Integer(1);
        if (call.Failed)
            return call.Failure;
        if (number is < 0 or > 3999 || form is < 0 or > 4)
            return CellError.Value;
        int[] values = [1000, 500, 100, 50, 10, 5, 1];
        const string Signs = "MDCLXVI";
        var text = new StringBuilder();
        for (var ten = 0; ten < values.Length; ten += 2)
        {
            var digit = number / values[ten];
            if (digit % 5 != 4)
            {
                if (digit > 4)
                    text.Append(Signs[ten - 1]);
                text.Append(Signs[ten], digit % 5);
                number %= values[ten];
                continue;
            }

            // A four or a nine: take the smallest numeral that the form allows from the next larger five or ten.
            var larger = digit == 4 ? ten - 1 : ten - 2;
            var smaller = ten;
            for (var step = 0; step < form && smaller < values.Length - 1 && values[larger] - values[smaller + 1] <= number; step++)
                smaller++;
            text.Append(Signs[smaller]).Append(Signs[larger]);
            number -= values[larger] - values[smaller];
        }

        return text.ToString();
    }

    private static FormulaValue Arabic(Call call)
    {
        var text = call.Text(0).Trim().ToUpperInvariant();
        var negative = text.StartsWith('-');
        var (sum, before) = (0, 0);
        if (text.Length > 255)
            return CellError.Value;
        foreach (var sign in (negative ? text[1..] : text).Reverse())
        {
            var value = Array.Find(Numerals, numeral => numeral.Sign.Length == 1 && numeral.Sign[0] == sign).Value;
            if (value == 0)
                return CellError.Value;
            sum += value < before ? -value : value;
            before = Math.Max(before, value);
        }

        return negative ? -sum : sum;
    }

    private static FormulaValue Bits(Call call, Func<long, long, long> join)
    {
        var (a, b) = (call.Number(0), call.Number(1));
        return IsBits(a) && IsBits(b) ? join((long)a, (long)b) : CellError.Number;
    }

    private static FormulaValue Shifted(Call call, int direction)
    {
        var (number, by) = (call.Number(0), call.Integer(1) * direction);
        if (!IsBits(number) || by is < -53 or > 53)
            return CellError.Number;
        var shifted = Math.Floor(number * Math.Pow(2, by));
        return shifted < BitLimit ? shifted : CellError.Number;
    }

    private static bool IsBits(double number) => number is >= 0 and < BitLimit && number == Math.Floor(number);
}
