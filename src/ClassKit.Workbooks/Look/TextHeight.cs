using System.Globalization;
using System.Text;

namespace ClassKit.Workbooks.Look;

/// <summary>Estimates how high wrapped text stands. Measuring it would need the fonts of the machine that shows it.</summary>
internal static class TextHeight
{
    /// <summary>The height of a line of 11-point text, in points.</summary>
    public const double Line = 15;

    /// <summary>
    /// By how much a column may be taken for wider where the text has several lines and every line of paper counts: the estimate is made
    /// for the widest letters, and over lines these average out. Measured on Carlito, whose letters are as wide as Calibri's.
    /// </summary>
    public const double Averaged = 1.06;

    /// <summary>Widths in the digits that column widths are counted in. Letters run a little narrower in all common fonts.</summary>
    private const double LetterWidth = 0.98;
    private const double SpaceWidth = 0.6;
    private const double WideWidth = 2;

    /// <summary>The height of a row that holds the text in a cell of that width, in points.</summary>
    /// <param name="text">The text; its line breaks count.</param>
    /// <param name="width">The cell's width in characters, as column widths are given.</param>
    public static double Of(string text, double width) => LinesOf(text, width) * Line + 3;

    /// <summary>How many lines a text fills, broken between words.</summary>
    public static int LinesOf(string text, double width) => text.Split('\n').Sum(line => WrappedLines(line, width));

    private static int WrappedLines(string line, double width)
    {
        var lines = 1;
        var used = 0.0;
        foreach (var word in line.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            var length = WidthOf(word);
            var needed = used == 0 ? length : used + SpaceWidth + length;
            if (needed <= width)
            {
                used = needed;
                continue;
            }

            if (used > 0)
                lines++;
            lines += (int)Math.Ceiling(length / width) - 1;
            used = length % width;
        }

        return lines;
    }

    /// <summary>Wide scripts and pictures count as two digits.</summary>
    private static double WidthOf(string word)
    {
        var width = 0.0;
        foreach (var rune in word.EnumerateRunes())
        {
            width += Rune.GetUnicodeCategory(rune) switch
            {
                UnicodeCategory.NonSpacingMark or UnicodeCategory.Format => 0,
                _ => rune.Value >= 0x1100 && !(rune.Value is >= 0x2000 and < 0x2E80) ? WideWidth : LetterWidth,
            };
        }

        return width;
    }
}
