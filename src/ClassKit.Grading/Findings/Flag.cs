using ClassKit.Exercises.Cohorts;
using ClassKit.Exercises.Deadlines;
using ClassKit.Grading.Findings.Quoting;
using ClassKit.Grading.Findings.Refusals;

namespace ClassKit.Grading.Findings;

/// <summary>
/// A fact about a returned workbook that the instructor should see; never a verdict. Whoever takes in all of them has taken in every flag
/// there is.
/// </summary>
public abstract record Flag
{
    private Flag() { }

    /// <summary>A stable word, such as <c>given-overwritten</c>; see <see cref="FlagCodes"/>.</summary>
    public abstract string Code { get; }

    /// <summary>The same fact under other names.</summary>
    internal virtual Flag Under(IDisguise disguise) => this;

    /// <summary>A given's cell no longer holds what was dealt; it was graded with the dealt number.</summary>
    /// <param name="Place">The cell.</param>
    /// <param name="Label">What stands beside it.</param>
    /// <param name="Dealt">What was dealt.</param>
    /// <param name="Found">What it holds, a formula with its <c>=</c>; null for nothing.</param>
    public sealed record GivenOverwritten(CellPlace Place, string Label, decimal Dealt, Quotation? Found) : Flag
    {
        /// <inheritdoc/>
        public override string Code => FlagCodes.GivenOverwritten;

        internal override Flag Under(IDisguise disguise) => this with { Place = Place.Under(disguise), Found = Found?.Under(disguise) };
    }

    /// <summary>The file's name speaks of another student than the workbook inside.</summary>
    /// <param name="File">The file.</param>
    /// <param name="Named">Whom its name speaks of.</param>
    /// <param name="Owner">To whom the workbook was dealt, and for whom it was graded.</param>
    public sealed record NameDiffers(ReturnedName File, Student Named, Student Owner) : Flag
    {
        /// <inheritdoc/>
        public override string Code => FlagCodes.NameDiffers;

        internal override Flag Under(IDisguise disguise) =>
            new NameDiffers(File.Under(disguise), disguise.OfStudent(Named), disguise.OfStudent(Owner));
    }

    /// <summary>
    /// The numbers in the workbook are those dealt to another student than the one whose id it bears. It was graded with the numbers dealt to
    /// that one; cells that hold the other's are not told one by one.
    /// </summary>
    /// <param name="File">The file.</param>
    /// <param name="Bears">Whose id it bears, and for whom it was graded.</param>
    /// <param name="Other">To whom its numbers were dealt.</param>
    public sealed record NumbersOfAnother(ReturnedName File, Student Bears, Student Other) : Flag
    {
        /// <inheritdoc/>
        public override string Code => FlagCodes.NumbersOfAnother;

        internal override Flag Under(IDisguise disguise) =>
            new NumbersOfAnother(File.Under(disguise), disguise.OfStudent(Bears), disguise.OfStudent(Other));
    }

    /// <summary>A file under another student's name holds work of one who sent a file of their own, which counts.</summary>
    /// <param name="File">The file, which counts for nobody.</param>
    /// <param name="Named">Whom its name speaks of.</param>
    /// <param name="Owner">To whom the workbook was dealt.</param>
    public sealed record UnderOtherName(ReturnedName File, Student Named, Student Owner) : Flag
    {
        /// <inheritdoc/>
        public override string Code => FlagCodes.UnderOtherName;

        internal override Flag Under(IDisguise disguise) =>
            new UnderOtherName(File.Under(disguise), disguise.OfStudent(Named), disguise.OfStudent(Owner));
    }

    /// <summary>Work with a due moment does not say when it was saved.</summary>
    /// <param name="File">The file.</param>
    public sealed record SavedUnknown(ReturnedName File) : Flag
    {
        /// <inheritdoc/>
        public override string Code => FlagCodes.SavedUnknown;

        internal override Flag Under(IDisguise disguise) => new SavedUnknown(File.Under(disguise));
    }

    /// <summary>The student's id was gone from the workbook.</summary>
    /// <param name="File">The file.</param>
    /// <param name="ByNumbers">True if the numbers dealt told whose it is, false if only the file's name did.</param>
    public sealed record OwnerInferred(ReturnedName File, bool ByNumbers) : Flag
    {
        /// <inheritdoc/>
        public override string Code => FlagCodes.OwnerInferred;

        internal override Flag Under(IDisguise disguise) => this with { File = File.Under(disguise) };
    }

    /// <summary>An exercise was answered on another sheet than the one it was dealt on, and that one was graded.</summary>
    /// <param name="Exercise">The exercise's title.</param>
    /// <param name="Sheet">The name of the sheet.</param>
    public sealed record OtherSheet(string Exercise, Quotation Sheet) : Flag
    {
        /// <inheritdoc/>
        public override string Code => FlagCodes.OtherSheet;

        internal override Flag Under(IDisguise disguise) => this with { Sheet = Sheet.Under(disguise) };
    }

    /// <summary>A workbook saved after it was due.</summary>
    /// <param name="File">The file.</param>
    /// <param name="Saved">When it says that it was saved last, in universal time; after <paramref name="Due"/>.</param>
    /// <param name="Due">When it was due.</param>
    /// <param name="Off">The share of the points taken off for it, 0 to 1.</param>
    public sealed record SavedLate(ReturnedName File, DateTime Saved, DueMoment Due, decimal Off) : Flag
    {
        /// <inheritdoc/>
        public override string Code => FlagCodes.Late;

        internal override Flag Under(IDisguise disguise) => this with { File = File.Under(disguise) };
    }

    /// <summary>A workbook does not say which clock its time is of, and by one it was saved in time, by another late.</summary>
    /// <param name="File">The file.</param>
    /// <param name="Saved">The earlier reading, in universal time; in time.</param>
    /// <param name="OrSaved">The later one; late.</param>
    /// <param name="Due">When it was due.</param>
    public sealed record SavedUnclear(ReturnedName File, DateTime Saved, DateTime OrSaved, DueMoment Due) : Flag
    {
        /// <inheritdoc/>
        public override string Code => FlagCodes.SavedUnclear;

        internal override Flag Under(IDisguise disguise) => this with { File = File.Under(disguise) };
    }

    /// <summary>
    /// A workbook says that it was saved after it was due, and more than a day after its folder or archive says that the file itself was
    /// changed last: the clock inside is wrong, or that date is.
    /// </summary>
    /// <param name="File">The file.</param>
    /// <param name="Saved">When it says that it was saved last, in universal time.</param>
    /// <param name="Dated">When the file was changed last, by the folder or archive.</param>
    /// <param name="Due">When it was due.</param>
    public sealed record SavedAfterItCame(ReturnedName File, DateTime Saved, DateTime Dated, DueMoment Due) : Flag
    {
        /// <inheritdoc/>
        public override string Code => FlagCodes.SavedAfterItCame;

        internal override Flag Under(IDisguise disguise) => this with { File = File.Under(disguise) };
    }

    /// <summary>A student returned more than one file.</summary>
    /// <param name="Student">The student.</param>
    /// <param name="Files">All of them, by path.</param>
    /// <param name="Graded">The one that was graded.</param>
    public sealed record SeveralFiles(Student Student, IReadOnlyList<ReturnedName> Files, ReturnedName Graded) : Flag
    {
        /// <inheritdoc/>
        public override string Code => FlagCodes.SeveralFiles;

        internal override Flag Under(IDisguise disguise) =>
            new SeveralFiles(disguise.OfStudent(Student), [.. Files.Select(file => file.Under(disguise))], Graded.Under(disguise));
    }

    /// <summary>A student returned a workbook of another deal, which was not graded.</summary>
    /// <param name="File">The file.</param>
    /// <param name="Why">What it is instead.</param>
    public sealed record OfOtherDeal(ReturnedName File, Uncounted.OfOtherDeal Why) : Flag
    {
        /// <inheritdoc/>
        public override string Code => FlagCodes.OtherDeal;

        internal override Flag Under(IDisguise disguise) =>
            new OfOtherDeal(File.Under(disguise), (Uncounted.OfOtherDeal)Why.Under(disguise));
    }

    /// <summary>What a workbook says of its deal does not agree with itself or with its numbers; it was graded.</summary>
    /// <param name="File">The file.</param>
    /// <param name="Others">The codes of other deals in it; none if it is the numbers that do not fit.</param>
    /// <param name="Own">The code of the deal that is graded; null if it has none.</param>
    public sealed record DealDoubtful(ReturnedName File, IReadOnlyList<string> Others, string? Own) : Flag
    {
        /// <inheritdoc/>
        public override string Code => FlagCodes.DealDoubtful;

        internal override Flag Under(IDisguise disguise) => this with { File = File.Under(disguise) };
    }

    /// <summary>A formula that we cannot evaluate.</summary>
    /// <param name="Place">Its cell.</param>
    /// <param name="Formula">The formula with its <c>=</c>.</param>
    public sealed record FormulaToLookAt(CellPlace Place, Quotation Formula) : Flag
    {
        /// <inheritdoc/>
        public override string Code => FlagCodes.FormulaToLookAt;

        internal override Flag Under(IDisguise disguise) => new FormulaToLookAt(Place.Under(disguise), Formula.Under(disguise));
    }

    /// <summary>A student returned a file and answered on paper as well; the one of more points counts.</summary>
    /// <param name="Student">Who.</param>
    /// <param name="File">The file, or the one that counts among several.</param>
    /// <param name="Paper">Where the answers on paper stand.</param>
    /// <param name="PaperCounts">True if the paper counts.</param>
    public sealed record PaperBeside(Student Student, ReturnedName File, ReturnedName Paper, bool PaperCounts) : Flag
    {
        /// <inheritdoc/>
        public override string Code => FlagCodes.PaperBeside;

        internal override Flag Under(IDisguise disguise) =>
            this with
            {
                Student = disguise.OfStudent(Student),
                File = File.Under(disguise),
                Paper = Paper.Under(disguise),
            };
    }

    /// <summary>Wrong numbers that are right for what another student was dealt.</summary>
    /// <param name="Student">Whose numbers they are.</param>
    /// <param name="Other">For whom they are right.</param>
    /// <param name="Parts">The parts, each as exercise and part.</param>
    /// <param name="Expected">The rate of classes in which chance alone brings this about, above 0.</param>
    public sealed record FitsAnotherVariant(
        Student Student,
        Student Other,
        IReadOnlyList<(string Exercise, string Part)> Parts,
        double Expected
    ) : Flag
    {
        /// <inheritdoc/>
        public override string Code => FlagCodes.FitsAnotherVariant;

        internal override Flag Under(IDisguise disguise) =>
            this with
            {
                Student = disguise.OfStudent(Student),
                Other = disguise.OfStudent(Other),
            };
    }

    /// <summary>Wrong answers written exactly as another student wrote them.</summary>
    /// <param name="Other">The other student.</param>
    /// <param name="Parts">The parts, each as exercise and part.</param>
    /// <param name="Both">How many parts both got wrong.</param>
    /// <param name="Expected">The rate of classes in which chance alone brings this about, above 0.</param>
    public sealed record SharedMistakes(Student Other, IReadOnlyList<(string Exercise, string Part)> Parts, int Both, double Expected)
        : Flag
    {
        /// <inheritdoc/>
        public override string Code => FlagCodes.SharedMistakes;

        internal override Flag Under(IDisguise disguise) => this with { Other = disguise.OfStudent(Other) };
    }

    /// <summary>A workbook last saved by the person who saved other students' ones, and few.</summary>
    /// <param name="Others">Those students.</param>
    public sealed record SharedAuthor(IReadOnlyList<Student> Others) : Flag
    {
        /// <inheritdoc/>
        public override string Code => FlagCodes.SharedAuthor;

        internal override Flag Under(IDisguise disguise) => new SharedAuthor([.. Others.Select(disguise.OfStudent)]);
    }

    /// <summary>A file that cannot be read and seems to be this student's.</summary>
    /// <param name="File">The file.</param>
    /// <param name="Refusal">Why it cannot be read.</param>
    public sealed record UnreadableFile(ReturnedName File, Refusal Refusal) : Flag
    {
        /// <inheritdoc/>
        public override string Code => FlagCodes.UnreadableFile;

        internal override Flag Under(IDisguise disguise) => new UnreadableFile(File.Under(disguise), Refusal.Under(disguise));
    }
}
