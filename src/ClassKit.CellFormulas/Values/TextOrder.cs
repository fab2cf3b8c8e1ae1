namespace ClassKit.CellFormulas.Values;

/// <summary>
/// The order of texts as English-language programs have it, the same on every machine: signs, then digits, then letters; letter case does
/// not count, and an accent only between texts that are otherwise alike. Letters past Latin come in the order of their codes.
/// </summary>
internal static class TextOrder
{
    private const string Signs = " _-,;:!?.'\"()[]{}@*/\\&#%`^+<=>|~$";

    // The letters from À (U+00C0) to ž (U+017E) without their marks, in capitals; signs among them stay.
    private const string Bases =
        "AAAAAAACEEEEIIIIDNOOOOO\u00D7OUUUUYTSAAAAAAACEEEEIIIIDNOOOOO\u00F7OUUUUYTY"
        + "AAAAAACCCCCCCCDDDDEEEEEEEEEEGGGGGGGGHHHHIIIIIIIIIIIIJJKKKLLLLLLLLLLNNNNNNNNNOOOOOOOORRRRRRSSSSSSSSTTTTTTUUUUUUUUUUUUWWYYYZZZZZZ";

    public static int Compare(string left, string right)
    {
        var length = Math.Min(left.Length, right.Length);
        for (var at = 0; at < length; at++)
        {
            if (left[at] == right[at])
                continue;
            var order = Weight(left[at]).CompareTo(Weight(right[at]));
            if (order != 0)
                return order;
        }

        return left.Length != right.Length
            ? left.Length.CompareTo(right.Length)
            : string.Compare(left, right, StringComparison.OrdinalIgnoreCase);
    }

    private static int Weight(char c)
    {
        if (char.IsAsciiDigit(c))
            return 0x10000 + c;
        if (c is >= '\u00C0' and <= '\u017E')
            c = Bases[c - '\u00C0'];
        if (char.IsLetter(c))
            return 0x20000 + char.ToUpperInvariant(c);
        return Signs.IndexOf(c, StringComparison.Ordinal) is var at and >= 0 ? at : 0x100 + c;
    }
}
