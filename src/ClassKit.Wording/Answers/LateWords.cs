using ClassKit.Exercises.Deadlines;
using ClassKit.Grading.Results;

namespace ClassKit.Wording.Answers;

/// <summary>How late work came.</summary>
public static class LateWords
{
    /// <summary>In the units that people use: <c>1 day and 8 hours</c>.</summary>
    public static string Of(Late late)
    {
        ArgumentNullException.ThrowIfNull(late);
        return late.By > TimeSpan.Zero ? Elapsed.Words(late.By)
            : late.Days == 1 ? "up to a day"
            : $"up to {late.Days} days";
    }
}
