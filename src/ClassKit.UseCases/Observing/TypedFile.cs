using System.Globalization;

namespace ClassKit.UseCases.Observing;

/// <summary>What an instructor typed of a team's measurements, among the files that the teams brought.</summary>
public static class TypedFile
{
    private const string Begins = "typed-team-";

    /// <summary>What the file of a team is called.</summary>
    /// <param name="team">Which team, from 1.</param>
    public static string Of(int team) => string.Create(CultureInfo.InvariantCulture, $"{Begins}{team}.json");

    /// <summary>True for the path of such a file.</summary>
    public static bool Is(string path) => Path.GetFileName(path).StartsWith(Begins, StringComparison.Ordinal);
}
