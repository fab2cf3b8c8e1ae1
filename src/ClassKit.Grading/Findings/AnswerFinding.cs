using ClassKit.CellFormulas.Obstacles;
using ClassKit.CellFormulas.Syntax;
using ClassKit.CellFormulas.Values;
using ClassKit.Exercises.Authoring;
using ClassKit.Grading.Findings.Edits;
using ClassKit.Grading.Findings.Quoting;

namespace ClassKit.Grading.Findings;

/// <summary>What was found of one answer, or beside it. Whoever takes in all of them has taken in every finding there is.</summary>
public abstract record AnswerFinding
{
    private AnswerFinding() { }

    /// <summary>The same finding under other names.</summary>
    internal virtual AnswerFinding Under(IDisguise disguise) => this;

    /// <summary>The right number, by a formula that follows the inputs.</summary>
    public sealed record Right : AnswerFinding
    {
        /// <summary>
        /// The student's formula over the exercise's names, with its <c>=</c>, where it is not the method and only comes near enough to it;
        /// else null.
        /// </summary>
        public string? Formula { get; init; }

        /// <summary>The student's cells by the names of what stands in them; null where <see cref="Formula"/> is.</summary>
        public IReadOnlyDictionary<string, string>? Cells { get; init; }
    }

    /// <summary>The right number, typed.</summary>
    public sealed record RightTyped : AnswerFinding;

    /// <summary>The right number, in a text that a formula makes.</summary>
    public sealed record RightInText : AnswerFinding;

    /// <summary>The right number, by a formula that does not do what the key does when the givens change.</summary>
    /// <param name="Typed">The givens that are typed into it; empty if none are known to be.</param>
    /// <param name="Varies">False for a formula that gives the same number whatever is given.</param>
    public sealed record NotFollowing(IReadOnlyList<TypedGiven> Typed, bool Varies) : AnswerFinding;

    /// <summary>A number that follows rightly from own earlier answers.</summary>
    /// <param name="From">The parts in which the slip was counted.</param>
    /// <param name="MethodShown">True if a formula shows the method.</param>
    public sealed record FollowsThrough(IReadOnlyList<Part> From, bool MethodShown) : AnswerFinding;

    /// <summary>A right formula that lacks numbers to work from.</summary>
    /// <param name="For">The parts in which no number stands; it was counted there.</param>
    public sealed record Waits(IReadOnlyList<Part> For) : AnswerFinding;

    /// <summary>It does what a known wrong method does.</summary>
    /// <param name="Misconception">That method.</param>
    public sealed record WrongTurn(Misconception Misconception) : AnswerFinding;

    /// <summary>Right in another unit.</summary>
    /// <param name="Unit">In which.</param>
    public sealed record OtherUnit(string Unit) : AnswerFinding;

    /// <summary>Off by a power of ten.</summary>
    /// <param name="Factor">10, 100 or 1000.</param>
    /// <param name="IsTooLarge">True if it is so many times too large, false if so many times too small.</param>
    public sealed record OffByTens(int Factor, bool IsTooLarge) : AnswerFinding
    {
        /// <summary>The student's formula over the exercise's names, with its <c>=</c>; null for a typed number, and where it is not
        /// known.</summary>
        public string? Formula { get; init; }

        /// <summary>The student's cells by the names of what stands in them; null where they are not known.</summary>
        public IReadOnlyDictionary<string, string>? Cells { get; init; }
    }

    /// <summary>A formula that rounds its answer more than the part allows.</summary>
    /// <param name="Step">To which multiple, in the cell's own scale.</param>
    /// <param name="Direction">In which direction.</param>
    public sealed record RoundsAnswer(decimal Step, RoundingDirection Direction) : AnswerFinding;

    /// <summary>A formula that works from a rounded earlier answer.</summary>
    /// <param name="Earlier">The part whose answer is rounded.</param>
    /// <param name="Step">To which multiple, in the scale of that part's cell.</param>
    /// <param name="Direction">In which direction.</param>
    public sealed record RoundsEarlier(Part Earlier, decimal Step, RoundingDirection Direction) : AnswerFinding;

    /// <summary>A formula that is the key but for what it rounds, more than the part allows or otherwise than the key does.</summary>
    /// <param name="Written">What rounds, over the exercise's names: <c>ROUND(share,2)</c>.</param>
    /// <param name="Belongs">What belongs there.</param>
    /// <param name="Cells">The student's cells by the names of what stands in them.</param>
    public sealed record RoundsWithin(string Written, string Belongs, IReadOnlyDictionary<string, string> Cells) : AnswerFinding;

    /// <summary>A typed number that is rounded more than the part allows.</summary>
    /// <param name="Decimals">To how many decimals, 0 to 3.</param>
    public sealed record TypedRounded(int Decimals) : AnswerFinding;

    /// <summary>A typed number that comes of rounding an earlier answer.</summary>
    /// <param name="Decimals">To how many decimals, 0 to 3.</param>
    public sealed record TypedFromRounded(int Decimals) : AnswerFinding;

    /// <summary>Wrong, and what a formula near the key gives: nobody listed it, and nobody knows that the student thought so.</summary>
    /// <param name="Edits">What is otherwise than in the key: one thing or two.</param>
    /// <param name="Formula">The whole formula over the exercise's names, with its <c>=</c>.</param>
    /// <param name="Cells">The student's cells by the names of what stands in them.</param>
    /// <param name="IsShown">True if a formula shows it, false if only a typed number does.</param>
    public sealed record NearMiss(IReadOnlyList<KeyEdit> Edits, string Formula, IReadOnlyDictionary<string, string> Cells, bool IsShown)
        : AnswerFinding;

    /// <summary>A number that nothing else explains.</summary>
    public sealed record NotRight : AnswerFinding
    {
        /// <summary>
        /// The student's formula over the exercise's names, with its <c>=</c>; null for a typed number, and for a formula that cannot be
        /// written like this.
        /// </summary>
        public string? Formula { get; init; }

        /// <summary>The student's cells by the names of what stands in them; null where they are not known.</summary>
        public IReadOnlyDictionary<string, string>? Cells { get; init; }

        /// <summary>A cell that the formula uses though nothing stands in it; null where there is none.</summary>
        public UnusableCell? Lacks { get; init; }
    }

    /// <summary>An error value.</summary>
    /// <param name="Error">Which.</param>
    public sealed record ErrorValue(CellError Error) : AnswerFinding
    {
        /// <summary>The cell that led to it; null where none is seen.</summary>
        public UnusableCell? By { get; init; }

        internal override AnswerFinding Under(IDisguise disguise) => this with { By = By?.Under(disguise) };
    }

    /// <summary>Nothing was entered.</summary>
    /// <param name="Cell">The cell within its sheet, such as <c>B5</c>.</param>
    public sealed record Empty(string Cell) : AnswerFinding;

    /// <summary>There was no workbook to read it in; the instructor marks it by hand.</summary>
    public sealed record NoWorkbook : AnswerFinding;

    /// <summary>A formula that we cannot evaluate.</summary>
    /// <param name="Why">Why not.</param>
    public sealed record NotEvaluated(Obstacle Why) : AnswerFinding
    {
        internal override AnswerFinding Under(IDisguise disguise) => new NotEvaluated(Why.Under(disguise.OfTyped));
    }

    /// <summary>A text that begins like a formula and cannot be read as one.</summary>
    /// <param name="Found">What stands in the way.</param>
    /// <param name="Character">At which character, from 1.</param>
    public sealed record BrokenFormula(SyntaxFound Found, int Character) : AnswerFinding
    {
        internal override AnswerFinding Under(IDisguise disguise) =>
            this with
            {
                Found = Found with { Text = disguise.OfTyped(Found.Text) },
            };
    }

    /// <summary>A text that reads like a formula, of which something is no cell of the workbook.</summary>
    /// <param name="Name">The first name in it; null if it has none.</param>
    public sealed record NamesNoCell(Quotation? Name) : AnswerFinding
    {
        internal override AnswerFinding Under(IDisguise disguise) => new NamesNoCell(Name?.Under(disguise));
    }

    /// <summary>A formula without its equals sign.</summary>
    /// <param name="Text">What was typed.</param>
    public sealed record LacksEqualsSign(Quotation Text) : AnswerFinding
    {
        internal override AnswerFinding Under(IDisguise disguise) => new LacksEqualsSign(Text.Under(disguise));
    }

    /// <summary>A text or a logical that is no number.</summary>
    /// <param name="Kind">What keeps it from being one.</param>
    /// <param name="Text">What was typed.</param>
    /// <param name="Length">How many characters that is.</param>
    /// <param name="Found">What stands in the way; empty where something is missing.</param>
    /// <param name="Character">At which character, from 1.</param>
    public sealed record NoNumber(UnreadableKind Kind, Quotation Text, int Length, Quotation Found, int Character) : AnswerFinding
    {
        internal override AnswerFinding Under(IDisguise disguise)
        {
            var text = Text.Under(disguise);
            return this with { Text = text, Length = text.Text.Length, Found = Found.Under(disguise) };
        }
    }

    /// <summary>A text that names none of the options that could be chosen, or more than one.</summary>
    /// <param name="Text">What was typed.</param>
    /// <param name="Options">How many there were.</param>
    public sealed record NoOption(Quotation Text, int Options) : AnswerFinding
    {
        internal override AnswerFinding Under(IDisguise disguise) => this with { Text = Text.Under(disguise) };
    }

    /// <summary>One letter, and no other, stands among words where a letter alone was asked: the instructor reads which was meant.</summary>
    /// <param name="Text">What was typed.</param>
    public sealed record OptionInWords(Quotation Text) : AnswerFinding
    {
        internal override AnswerFinding Under(IDisguise disguise) => new OptionInWords(Text.Under(disguise));
    }

    /// <summary>An answer in own words, for the instructor to read. The words are the answer's value, and no finding.</summary>
    /// <param name="Length">How many characters the student wrote.</param>
    public sealed record Wrote(int Length) : AnswerFinding;

    /// <summary>Beside the finding: a formula makes text of its number.</summary>
    /// <param name="Text">That text.</param>
    public sealed record MakesText(Quotation Text) : AnswerFinding
    {
        internal override AnswerFinding Under(IDisguise disguise) => new MakesText(Text.Under(disguise));
    }

    /// <summary>Beside the finding: a cell holds a percentage a hundred times too large.</summary>
    /// <param name="Held">What it holds: 65 where 65 % was meant.</param>
    public sealed record HundredfoldPercent(double Held) : AnswerFinding;

    /// <summary>Beside the finding: a quantity that follows rightly from a slip, and cannot be.</summary>
    /// <param name="Value">The quantity.</param>
    public sealed record Impossible(double Value) : AnswerFinding;

    /// <summary>Beside the finding: the cell held its formula as text, and it was put to work.</summary>
    public sealed record StoodAsText : AnswerFinding;
}
