using System.Text.Json.Serialization;

namespace ClassKit.UseCases.Dealing;

/// <summary>The shape of dealt.json, as it stands in the file.</summary>
/// <remarks>Formulas are texts with their leading <c>=</c> over the names of the exercise's givens and of its earlier parts.</remarks>
internal sealed record DealtDocument
{
    /// <summary>The version that this program writes and reads.</summary>
    public const int CurrentVersion = 1;

    public required int Version { get; init; }
    public required string Lesson { get; init; }
    public required string LessonTitle { get; init; }
    public required string Cohort { get; init; }

    /// <summary>Absent in a deal made before deals had identities.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public IdentityEntry? Identity { get; init; }

    /// <summary>The deal that this one is sat again for; absent for a first sitting.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public IdentityEntry? Replaces { get; init; }

    /// <summary>practice, follow-up or rehearsal; absent for work that is graded.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public string? Purpose { get; init; }

    /// <summary>The IANA name of the zone that the class's clocks are set to; absent where nobody has said.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public string? TimeZone { get; init; }

    /// <summary>What the class prints on, <c>A4</c> or <c>Letter</c>; absent where nobody has said.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public string? Paper { get; init; }

    /// <summary>Absent where the work may come at any time.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public DueEntry? Due { get; init; }

    /// <summary>How the exercises stand on their sheets; absent where each has a sheet of the usual form.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public PlanEntry? Layout { get; init; }

    public required ulong Seed { get; init; }
    public required MarkingEntry Marking { get; init; }
    public required IReadOnlyList<ExerciseEntry> Exercises { get; init; }
    public required StudentEntries Students { get; init; }

    /// <param name="Code">To read aloud.</param>
    /// <param name="Digest">The SHA-256 that it is the short form of.</param>
    internal sealed record IdentityEntry(string Code, string Digest);

    internal sealed record MarkingEntry(
        string Id,
        string Title,
        decimal AccuracyShare,
        decimal FollowThroughShare,
        decimal MisconceptionShare,
        decimal TeachAgainBelow,
        decimal UnitSlipShare = 0,
        decimal RoundingSlipShare = 0
    )
    {
        /// <summary>Absent where it is that of a misconception.</summary>
        [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
        public decimal? NearMissShare { get; init; }

        /// <summary>best or newest.</summary>
        public string SeveralVersions
        {
            get;
            init => field = value ?? "best";
        } = "best";

        /// <summary>Absent where late work costs nothing.</summary>
        [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
        public LateEntry? Late { get; init; }

        /// <summary>Absent where all exercises count.</summary>
        [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
        public int? BestExercises { get; init; }

        /// <summary>Absent where points have no limit.</summary>
        [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
        public int? PointsAtMost { get; init; }
    }

    internal sealed record LateEntry(decimal ADay, decimal AtMost);

    internal sealed record ExerciseEntry(
        string Id,
        string Title,
        string Skill,
        string Level,
        int Minutes,
        string Source,
        string Problem,
        IReadOnlyList<GivenEntry> Givens,
        IReadOnlyList<string> Constraints,
        IReadOnlyList<PartEntry> Parts,
        IReadOnlyList<string> Hints
    )
    {
        /// <summary>Absent where nothing is worked out on the way.</summary>
        [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
        public IReadOnlyList<StepEntry>? Steps { get; init; }

        /// <summary>Absent where the problem has no picture.</summary>
        [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
        public PictureEntry? Picture { get; init; }
    }

    /// <param name="Shows">What is to be seen in it.</param>
    /// <param name="MediaType">image/png or image/jpeg.</param>
    /// <param name="Base64">Its file, in pieces: no text of the document is longer than others may be.</param>
    internal sealed record PictureEntry(string Shows, string MediaType, IReadOnlyList<string> Base64);

    internal sealed record StepEntry(string Id, string What, string Key, string Unit);

    internal sealed record GivenEntry(string Id, string Label, string Unit, decimal From, decimal To, decimal Step);

    internal sealed record PartEntry(
        string Id,
        string Ask,
        string Key,
        string Unit,
        ToleranceEntry Tolerance,
        decimal Points,
        bool FormulaAsked,
        IReadOnlyList<MisconceptionEntry> Misconceptions
    )
    {
        /// <summary>What the answer is chosen from, whose number, from 1, the key gives; absent where a number is asked.</summary>
        [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
        public ChoiceEntry? Choice { get; init; }

        /// <summary>
        /// What is looked for in an answer in own words, which no key is held against; absent where something else is asked.
        /// </summary>
        [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
        public WordsEntry? InWords { get; init; }

        /// <summary>The key over the exercise's steps; absent where it uses none.</summary>
        [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
        public string? Written { get; init; }
    }

    /// <param name="Kind">written.</param>
    /// <param name="LookFor">What a good answer says.</param>
    internal sealed record WordsEntry(string Kind, string LookFor);

    /// <param name="Kind">choose, match or order.</param>
    /// <param name="List">The list's name, which parts that share it have in common.</param>
    /// <param name="Options">As their author wrote them; their order before a student follows from what was dealt.</param>
    /// <param name="Why">Why the right one is right.</param>
    internal sealed record ChoiceEntry(string Kind, string List, IReadOnlyList<OptionEntry> Options, string Why)
    {
        /// <summary>Absent where nothing is drawn.</summary>
        [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
        public DrawingEntry? Drawing { get; init; }
    }

    /// <param name="Thing">cut dough or cut muffin.</param>
    /// <param name="States">What is seen in each state.</param>
    internal sealed record DrawingEntry(string Thing, IReadOnlyList<OptionEntry> States);

    internal sealed record OptionEntry(string Id, string Words);

    internal sealed record ToleranceEntry(double Amount, bool Relative)
    {
        /// <summary>True if answers must round to the same multiple of the amount; absent if not.</summary>
        [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingDefault)]
        public bool Rounding { get; init; }
    }

    internal sealed record MisconceptionEntry(string Id, string Formula, string Words)
    {
        /// <summary>The formula over the exercise's steps; absent where it uses none.</summary>
        [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
        public string? Written { get; init; }
    }

    internal sealed record StudentEntry(
        string Id,
        string Name,
        string Workbook,
        IReadOnlyList<GivenPlaceEntry> Givens,
        IReadOnlyList<AnswerPlaceEntry> Answers
    )
    {
        /// <summary>
        /// True for who shares a name in the class, and so bears the id behind it, also where the other one was dealt nothing; absent if
        /// not.
        /// </summary>
        [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingDefault)]
        public bool SharesName { get; init; }

        /// <summary>Absent where the student has everything as the class has it.</summary>
        [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
        public ArrangementEntry? Arrangement { get; init; }
    }

    /// <param name="LargePrint">True for large print.</param>
    /// <param name="ExtraTime">More time, as a share of the class's.</param>
    internal sealed record ArrangementEntry(bool LargePrint, decimal ExtraTime)
    {
        /// <summary>Absent where the work is due when the class's is.</summary>
        [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
        public DueEntry? Due { get; init; }

        /// <summary>Exercises that the others were dealt; absent where the student was dealt what the others were.</summary>
        [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
        public IReadOnlyList<string>? LeavesOut { get; init; }
    }

    internal sealed record GivenPlaceEntry(
        string Exercise,
        string Name,
        string DefinedName,
        string Sheet,
        string Cell,
        string Tag,
        decimal Value
    );

    internal sealed record AnswerPlaceEntry(
        string Exercise,
        string Part,
        string DefinedName,
        string Sheet,
        string Cell,
        string Tag,
        double Expected
    );
}
