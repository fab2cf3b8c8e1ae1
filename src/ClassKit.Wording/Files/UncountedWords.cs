using System.Diagnostics;
using System.Globalization;
using ClassKit.Grading.Findings;
using ClassKit.Grading.Intake;
using ClassKit.Grading.Results;
using ClassKit.Wording.Cohorts;
using ClassKit.Wording.Quoting;

namespace ClassKit.Wording.Files;

/// <summary>Why files do not count, in words that can be forwarded to the student.</summary>
public static class UncountedWords
{
    /// <summary>Why a file does not count; empty for one that does.</summary>
    public static string Of(AccountedFile file)
    {
        ArgumentNullException.ThrowIfNull(file);
        return file.Why is { } why ? Of(why) : "";
    }

    /// <summary>What is to be said of a file that bears one student's name and holds another's workbook.</summary>
    public static string Of(MisnamedFile file)
    {
        ArgumentNullException.ThrowIfNull(file);
        return $"By its name this file is {file.Named.Shown}'s, but the workbook inside was dealt to {file.Owner.Shown}, of whom another file is there. {(file.File.Why is null ? "" : Of(file.File) + " ")}Ask {file.Named.Shown} for their own work, and set this one aside.";
    }

    /// <summary>The reason in words.</summary>
    public static string Of(Uncounted why) =>
        why switch
        {
            Uncounted.NotRead(var refusal) => RefusalWords.Of(refusal),
            Uncounted.OfNobody(var cohort) =>
                $"This workbook was not dealt to anyone in {ClassName.InSentence(cohort)}: it carries no id of this class, and its numbers are nobody's. Was it dealt for another class or lesson?",
            Uncounted.OfOtherDeal other => OtherDealWords.Why(other),
            Uncounted.Copy(var graded) => $"The same file as {Quoted.Of(graded)}, byte for byte, which was graded.",
            Uncounted.OtherVersion version => string.Create(
                CultureInfo.InvariantCulture,
                $"Another version of {version.Student.Shown}'s work, worth {version.Points:0.##} of {version.OutOf:0.##} points; {Quoted.Of(version.Graded)} was graded because {Of(version.Because)}."
            ),
            _ => throw new UnreachableException($"No words for {why}."),
        };

    private static string Of(WhyThatVersion because) =>
        because switch
        {
            WhyThatVersion.SaysWhen => "it says when it was changed",
            WhyThatVersion.Newer(var changed, var other) => $"it was changed last, {Time(changed)}, and this one {Time(other)}",
            WhyThatVersion.OtherIsEmpty => "nothing is answered in this one",
            WhyThatVersion.OtherIsNamed(var named) => $"this one came under {named.Shown}'s name",
            WhyThatVersion.NotAllSayWhen =>
                "it earns most: not all of them say inside when they were saved, and by which clock, so that nobody can tell which is the newest",
            WhyThatVersion.EarnsAsMuch => "it earns as much",
            WhyThatVersion.EarnsMost => "it earns most",
            _ => throw new UnreachableException($"No words for {because}."),
        };

    private static string Time(DateTime time) => time.ToString("yyyy-MM-dd HH:mm:ss", CultureInfo.InvariantCulture);
}
