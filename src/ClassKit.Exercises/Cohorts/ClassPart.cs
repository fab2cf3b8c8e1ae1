using System.Globalization;

namespace ClassKit.Exercises.Cohorts;

/// <summary>
/// Students of a class who come one after another, as many as one workbook, or one page to print, holds for a person to read.
/// </summary>
/// <param name="Number">Which part, counted from 1.</param>
/// <param name="Parts">How many parts the class has.</param>
/// <param name="First">The first student's place in the class, counted from 1.</param>
/// <param name="Last">The last student's.</param>
/// <param name="Students">How many students the class has.</param>
public sealed record ClassPart(int Number, int Parts, int First, int Last, int Students)
{
    /// <summary>
    /// The most students in a part. Common practice, no source: five pages of names, and a workbook of some four thousand answers.
    /// </summary>
    public const int Most = 125;

    /// <summary>True if this is the whole class.</summary>
    public bool IsWhole => Parts == 1;

    /// <summary>The parts of a class of so many students: one for most classes, and for none.</summary>
    public static IReadOnlyList<ClassPart> Of(int students)
    {
        var parts = Math.Max(1, (students + Most - 1) / Most);
        return
        [
            .. Enumerable
                .Range(0, parts)
                .Select(part => new ClassPart(part + 1, parts, (part * Most) + 1, Math.Min((part + 1) * Most, students), students)),
        ];
    }

    /// <summary>The part's own of what stands in the order of the class.</summary>
    public IReadOnlyList<T> Of<T>(IReadOnlyList<T> ofClass)
    {
        ArgumentNullException.ThrowIfNull(ofClass);
        return IsWhole ? ofClass : [.. Enumerable.Range(First - 1, Last - First + 1).Select(at => ofClass[at])];
    }

    /// <summary>What the part's file is called: as the class's would be, and <c>gradebook-03.xlsx</c> where the class has parts.</summary>
    /// <param name="file">The name of the class's file.</param>
    public string Named(string file) =>
        IsWhole
            ? file
            : Path.GetFileNameWithoutExtension(file)
                + "-"
                + Number.ToString(
                    new string('0', Math.Max(2, Parts.ToString(CultureInfo.InvariantCulture).Length)),
                    CultureInfo.InvariantCulture
                )
                + Path.GetExtension(file);
}
