namespace ClassKit.Pages.Report;

/// <summary>What a discrimination index says, in words.</summary>
/// <remarks>
/// The lines are those of Ebel and Frisbie, Essentials of Educational Measurement (1991): 0.40, 0.30 and 0.20. An index between two printed
/// bands belongs to the lower one.
/// </remarks>
internal static class DiscriminationText
{
    private const double Clear = 0.40;
    private const double Fair = 0.30;
    private const double Weak = 0.20;

    public static string Of(double discrimination) =>
        discrimination switch
        {
            >= Clear => "clearly",
            >= Fair => "fairly well",
            >= Weak => "weakly",
            >= 0 => "hardly",
            _ => "the wrong way round",
        };
}
