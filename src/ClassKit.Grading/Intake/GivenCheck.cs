namespace ClassKit.Grading.Intake;

/// <summary>Whether a number in a returned workbook is the one that was dealt.</summary>
internal static class GivenCheck
{
    /// <summary>Room for the last bit that a program may lose by writing 15 digits.</summary>
    private const double Slack = 1e-12;

    public static bool IsAsDealt(double returned, decimal dealt) =>
        Math.Abs(returned - (double)dealt) <= Slack * Math.Max(1, Math.Abs((double)dealt));
}
