namespace ClassKit.Grading.Results;

/// <summary>The words that files and tables use for outcomes and statuses, stable over versions.</summary>
public static class OutcomeWords
{
    /// <summary>The word for an outcome.</summary>
    public static string Of(Outcome outcome) =>
        outcome switch
        {
            Outcome.Sound => "sound",
            Outcome.ValueOnly => "value-only",
            Outcome.FollowThrough => "follow-through",
            Outcome.Misconception => "misconception",
            Outcome.Incorrect => "incorrect",
            Outcome.Blank => "blank",
            Outcome.Unreadable => "unreadable",
            Outcome.Unsupported => "unsupported",
        };

    /// <summary>The outcome that a word stands for.</summary>
    /// <exception cref="InvalidOperationException">The word stands for none; <paramref name="word"/> comes from a record that was
    /// checked.</exception>
    public static Outcome Find(string word) => Enum.GetValues<Outcome>().First(outcome => Of(outcome) == word);

    /// <summary>The status that a word stands for.</summary>
    /// <exception cref="InvalidOperationException">The word stands for none; <paramref name="word"/> comes from a record that was
    /// checked.</exception>
    public static GradeStatus FindStatus(string word) => Enum.GetValues<GradeStatus>().First(status => Of(status) == word);

    /// <summary>What became of a file that a word is said of.</summary>
    /// <exception cref="InvalidOperationException">The word stands for nothing of the kind; <paramref name="word"/> comes from a record
    /// that was checked.</exception>
    public static FileFate FindFate(string word) => Enum.GetValues<FileFate>().First(fate => Of(fate) == word);

    /// <summary>The word for what was seen of working on paper.</summary>
    public static string Of(PaperWorking working) =>
        working switch
        {
            PaperWorking.NotSeen => "number-alone",
            PaperWorking.ShowsMethod => "working-shows-method",
        };

    /// <summary>What was seen of working that a word is said of.</summary>
    /// <exception cref="InvalidOperationException">The word stands for nothing of the kind; <paramref name="word"/> comes from a record
    /// that was checked.</exception>
    public static PaperWorking FindWorking(string word) => Enum.GetValues<PaperWorking>().First(working => Of(working) == word);

    /// <summary>The word for a status.</summary>
    public static string Of(GradeStatus status) =>
        status switch
        {
            GradeStatus.Graded => "graded",
            GradeStatus.Missing => "missing",
            GradeStatus.Unreadable => "unreadable",
        };

    /// <summary>The word for what became of a file.</summary>
    public static string Of(FileFate fate) =>
        fate switch
        {
            FileFate.Graded => "graded",
            FileFate.Paper => "paper",
            FileFate.OtherVersion => "other-version",
            FileFate.Refused => "refused",
            FileFate.OurError => "our-error",
            FileFate.NotOfThisClass => "not-of-this-class",
            FileFate.OtherDeal => "other-deal",
            FileFate.Leftover => "leftover",
        };
}
