using ClassKit.Content.Ingredients;

namespace ClassKit.UseCases.Handing;

/// <summary>Which names in a bundle may become files: such as a lesson leads to, in folders below the new one and nowhere else.</summary>
internal static class BundleName
{
    private const int MostSteps = 8;
    private const int LongestStep = 100;

    private static readonly string[] Endings = [".md", ".png", ".jpg", ".jpeg"];

    /// <summary>Names that one system or another keeps for devices, whatever stands behind their point.</summary>
    private static readonly string[] Devices =
    [
        "con",
        "prn",
        "aux",
        "nul",
        .. Enumerable.Range(0, 10).SelectMany(number => new[] { $"com{number}", $"lpt{number}" }),
    ];

    public static bool IsOfLesson(string name)
    {
        var steps = name.Split('/');
        return steps.Length <= MostSteps
            && steps.All(IsPlain)
            && (
                Endings.Contains(Path.GetExtension(steps[^1]), StringComparer.OrdinalIgnoreCase)
                || IngredientsReader.FileNames.Contains(steps[^1], StringComparer.Ordinal)
            );
    }

    /// <summary>No way out of the folder, nothing hidden, nothing that a system reads otherwise than we do.</summary>
    private static bool IsPlain(string step) =>
        step.Length is > 0 and <= LongestStep
        && step[0] is not ('.' or ' ' or '~')
        && step[^1] is not ('.' or ' ')
        && !step.Any(letter =>
            char.IsControl(letter) || char.IsSurrogate(letter) || letter is '\\' or ':' or '*' or '?' or '"' or '<' or '>' or '|'
        )
        && !Devices.Contains(step.Split('.')[0], StringComparer.OrdinalIgnoreCase);
}
