using System.Globalization;
using System.Text.RegularExpressions;

namespace ClassKit.EndToEnd.Tests.Pages;

/// <summary>What paper the sides of a printed file are on.</summary>
internal static partial class PaperOfPdf
{
    /// <summary>ISO 216: 210 mm × 297 mm, in points.</summary>
    public static readonly (double Short, double Long) A4 = (595.3, 841.9);

    /// <summary>ANSI/ASME Y14.1: 8.5 in × 11 in, in points.</summary>
    public static readonly (double Short, double Long) Letter = (612, 792);

    /// <summary>Every side, upright or on its side alike: its shorter and its longer edge in points.</summary>
    public static IReadOnlyList<(double Short, double Long)> Sides(string pdf) =>
        [
            .. PageSize()
                .Matches(Tool.PdfToText.Run("-bbox", pdf, "-"))
                .Select(match => match.Groups.Values.Skip(1).Select(edge => double.Parse(edge.Value, CultureInfo.InvariantCulture)).Order())
                .Select(edges => (edges.First(), edges.Last())),
        ];

    /// <summary>True for a side of that paper: programs round edges to whole points.</summary>
    public static bool Is(this (double Short, double Long) side, (double Short, double Long) paper) =>
        Math.Abs(side.Short - paper.Short) < 1.5 && Math.Abs(side.Long - paper.Long) < 1.5;

    [GeneratedRegex("<page width=\"([0-9.]+)\" height=\"([0-9.]+)\"")]
    private static partial Regex PageSize();
}
