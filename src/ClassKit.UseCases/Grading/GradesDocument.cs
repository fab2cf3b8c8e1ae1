using System.Text.Json.Nodes;
using System.Text.Json.Serialization;
using ClassKit.UseCases.Dealing;
using ClassKit.UseCases.Grading.Facts;

namespace ClassKit.UseCases.Grading;

/// <summary>
/// The shape of grades.json, as it stands in the file: words for people, and beside them the facts that they are made of, so that the
/// record is read back as it was.
/// </summary>
internal sealed record GradesDocument(
    GradedEntries Students,
    IReadOnlyList<GradesDocument.UnmatchedEntry> Unmatched,
    IReadOnlyList<GradesDocument.FileEntry> Files
)
{
    /// <summary>What decided the grades; absent in records of earlier versions.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public JudgeEntry? Judge { get; init; }

    /// <summary>When the work was due; absent where it may come at any time.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public DueEntry? Due { get; init; }

    /// <summary>
    /// What was dealt, as in dealt.json but for the students, with the keys and the marking scheme of these grades; absent in records of
    /// earlier versions.
    /// </summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public DealtDocument? Deal { get; init; }

    /// <summary>Points that the instructor typed into a gradebook; absent where there are none.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public IReadOnlyList<TypedEntry>? Typed { get; init; }

    /// <summary>Changed gradebooks that cannot be read; absent where there are none.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public IReadOnlyList<UnreadEntry>? UnreadGradebooks { get; init; }

    /// <param name="File">The gradebook.</param>
    /// <param name="Cell">Where, with the sheet.</param>
    /// <param name="Student">The student's id.</param>
    /// <param name="Exercise">The exercise's id.</param>
    /// <param name="Part">The part's id.</param>
    /// <param name="Before">What was graded, or null.</param>
    /// <param name="Entered">What stands in the cell.</param>
    /// <param name="Points">What the answer is to have, or null.</param>
    /// <param name="Problem">Why it cannot be taken over; null if it can.</param>
    /// <param name="TakenOver">True if the grades count it.</param>
    internal sealed record TypedEntry(
        string File,
        string Cell,
        string Student,
        string Exercise,
        string Part,
        decimal? Before,
        string Entered,
        decimal? Points,
        JsonObject? Problem,
        bool TakenOver
    );

    /// <param name="File">The gradebook.</param>
    /// <param name="Why">Why it cannot be read.</param>
    internal sealed record UnreadEntry(string File, JsonObject Why);

    /// <param name="Version">The judge's version.</param>
    /// <param name="Program">The program's version.</param>
    /// <param name="Fresh">The fresh inputs drawn for the class.</param>
    internal sealed record JudgeEntry(int Version, string Program, IReadOnlyList<PoolEntry> Fresh);

    /// <param name="Exercise">The exercise's id.</param>
    /// <param name="Givens">The ids of its givens, with blanks between them.</param>
    /// <param name="Inputs">The givens' values in that order, a text for each set.</param>
    internal sealed record PoolEntry(string Exercise, string Givens, IReadOnlyList<string> Inputs);

    /// <param name="Exercise">The exercise's id.</param>
    /// <param name="Used">The places in the pool, counted from 0, of the inputs that the student's workbook was tried with.</param>
    internal sealed record UsedEntry(string Exercise, string Used);

    internal sealed record GradedEntry(
        string Id,
        string Name,
        string Status,
        string? File,
        decimal Points,
        decimal OutOf,
        IReadOnlyList<AnswerEntry> Answers,
        IReadOnlyList<FlagEntry> Flags
    )
    {
        /// <summary>That the work came late, and the share that <see cref="Points"/> lost by it; absent where it was in time.</summary>
        [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
        public LatenessEntry? Late { get; init; }

        /// <summary>
        /// When this student's work was due, where it came later than that; absent where it was due when the class's was.
        /// </summary>
        [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
        public DueEntry? Due { get; init; }

        /// <summary>
        /// The fresh inputs that the workbook was tried with; absent where nothing was judged, and in records of earlier versions.
        /// </summary>
        [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
        public IReadOnlyList<UsedEntry>? Fresh { get; init; }

        /// <summary>The ids of the exercises that do not count towards <see cref="Points"/>; absent where all do.</summary>
        [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
        public IReadOnlyList<string>? Uncounted { get; init; }

        /// <summary>True where another one of the class has that name, though perhaps not of this deal; absent if not.</summary>
        [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingDefault)]
        public bool SharesName { get; init; }
    }

    /// <param name="Days">Days begun since it was due.</param>
    /// <param name="Off">The share taken off, 0 to 1.</param>
    internal sealed record LatenessEntry(int Days, decimal Off)
    {
        /// <summary>Whole minutes since it was due; absent in records of earlier versions.</summary>
        [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
        public long? Minutes { get; init; }

        /// <summary>The same to the last fraction of a second, such as <c>1.08:00:00</c>; absent in records of earlier versions.</summary>
        [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
        public TimeSpan? By { get; init; }
    }

    /// <param name="Exercise">The exercise's id.</param>
    /// <param name="Part">The part's id.</param>
    /// <param name="Outcome">One of the words of the contract.</param>
    /// <param name="Points">Earned.</param>
    /// <param name="OutOf">Possible.</param>
    /// <param name="Value">A number, a text, true or false; null for a blank.</param>
    /// <param name="Expected">What the key gives.</param>
    /// <param name="Formula">With its leading <c>=</c>; null for a typed value.</param>
    /// <param name="Misconception">The id of the misconception met, or null.</param>
    /// <param name="Note">To the student.</param>
    internal sealed record AnswerEntry(
        string Exercise,
        string Part,
        string Outcome,
        decimal Points,
        decimal OutOf,
        object? Value,
        double Expected,
        string? Formula,
        string? Misconception,
        string Note
    )
    {
        /// <summary>The id of the option that was chosen; absent where none was.</summary>
        [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
        public string? Chosen { get; init; }

        /// <summary>The instructor's correction that <see cref="Points"/> follow; absent where they are the grader's.</summary>
        [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
        public CorrectionEntry? Correction { get; init; }

        /// <summary>
        /// What was seen of the working, for an answer on paper: number-alone or working-shows-method. Absent for one in a workbook.
        /// </summary>
        [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
        public string? Paper { get; init; }

        /// <summary>True where <see cref="Value"/> is the text of an error value; absent where it is what it is.</summary>
        [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingDefault)]
        public bool IsError { get; init; }

        /// <summary>What was found, what decided first; see <see cref="FindingShapes"/>. Absent in records of earlier versions.</summary>
        [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
        public IReadOnlyList<JsonObject>? Findings { get; init; }

        /// <summary>
        /// The student's own values of earlier parts that it was judged with, by part id; absent where they are the key's.
        /// </summary>
        [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
        public IReadOnlyDictionary<string, double>? OwnEarlier { get; init; }
    }

    /// <param name="AsGraded">The points without it.</param>
    /// <param name="Reason">The instructor's.</param>
    internal sealed record CorrectionEntry(decimal AsGraded, string Reason);

    internal sealed record FlagEntry(string Code, string Message)
    {
        /// <summary>The fact; see <see cref="FlagShapes"/>. Absent in records of earlier versions.</summary>
        [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
        public JsonObject? Fact { get; init; }
    }

    internal sealed record UnmatchedEntry(string File, string Reason);

    /// <param name="File">Its path within what was returned.</param>
    /// <param name="Sha256">The digest of what was read; null for a file that was not.</param>
    /// <param name="Modified">When it was saved last, by what stands inside it; null if it does not say.</param>
    /// <param name="Fate">graded, paper, other-version, refused, our-error, not-of-this-class, other-deal or leftover.</param>
    /// <param name="Student">The id of the student whose it is, or by its name seems to be; else null.</param>
    /// <param name="Reason">Why it does not count; empty for one that does.</param>
    internal sealed record FileEntry(string File, string? Sha256, DateTime? Modified, string Fate, string? Student, string Reason)
    {
        /// <summary>
        /// The fact that <see cref="Reason"/> is made of; see <see cref="UncountedShapes"/>. Absent for a file that counts, and in records
        /// of earlier versions.
        /// </summary>
        [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
        public JsonObject? Why { get; init; }

        /// <summary>Which deal it is from, if it is another.</summary>
        [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
        public JsonObject? OtherDeal { get; init; }

        /// <summary>What went wrong in our own program, if something did.</summary>
        [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
        public string? Fault { get; init; }
    }
}
