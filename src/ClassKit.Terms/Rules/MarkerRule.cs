namespace ClassKit.Terms.Rules;

/// <summary>What counts where two have marked the same work.</summary>
public enum MarkerRule
{
    /// <summary>The mean of both.</summary>
    Mean,

    /// <summary>The first marker's; the second only checks.</summary>
    First,
}
