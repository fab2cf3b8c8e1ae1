namespace ClassKit.Wording.Cohorts;

/// <summary>What is said of a class whose name is known or not: only a class profile names one.</summary>
public static class ClassName
{
    /// <summary>
    /// Behind other words, for a line at the top of a page: <c> · Tuesday bakers</c>; nothing for a class without a name.
    /// </summary>
    public static string Behind(string cohort)
    {
        ArgumentNullException.ThrowIfNull(cohort);
        return cohort.Length == 0 ? "" : $" · {cohort}";
    }

    /// <summary>In a sentence: its name, or “this class”.</summary>
    public static string InSentence(string cohort)
    {
        ArgumentNullException.ThrowIfNull(cohort);
        return cohort.Length == 0 ? "this class" : cohort;
    }
}
