using System.Globalization;

namespace ClassKit.UseCases.Observing;

/// <summary>Team 2 before team 10.</summary>
internal sealed class NaturalOrder : IComparer<string>
{
    private static readonly CompareInfo Compare = CultureInfo.InvariantCulture.CompareInfo;

    public static NaturalOrder Instance { get; } = new();

    int IComparer<string>.Compare(string? x, string? y) =>
        Compare.Compare(x, y, CompareOptions.NumericOrdering | CompareOptions.IgnoreCase);
}
