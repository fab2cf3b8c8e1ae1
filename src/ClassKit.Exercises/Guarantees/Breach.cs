using ClassKit.CellFormulas.Formulas;
using ClassKit.CellFormulas.Values;
using ClassKit.Exercises.Authoring;

namespace ClassKit.Exercises.Guarantees;

/// <summary>How a draw breaks a rule, with the numbers met in this draw. The set is closed: each has its words in Wording.</summary>
/// <param name="Rule">The rule's name.</param>
/// <param name="Culprit">What in the exercise is at fault.</param>
public abstract record Breach(string Rule, Culprit Culprit)
{
    /// <summary>The same for all draws with the same fault, whatever their numbers.</summary>
    internal object Fault => (GetType(), Culprit, Apart);

    /// <summary>What else than the culprit tells one fault of a kind from another.</summary>
    private protected virtual object? Apart => null;

    /// <summary>A key gives no number.</summary>
    /// <param name="Rule">The rule's name.</param>
    /// <param name="Part">Whose key.</param>
    /// <param name="Given">What it gives.</param>
    public sealed record NoNumber(string Rule, Part Part, CellValue Given) : Breach(Rule, Culprit.Of(Part));

    /// <summary>An answer is out of tolerance when it is rounded as the answer key prints it.</summary>
    /// <param name="Rule">The rule's name.</param>
    /// <param name="Part">Whose answer.</param>
    /// <param name="Answer">What the key gives, in the part's unit.</param>
    public sealed record NotWritable(string Rule, Part Part, double Answer) : Breach(Rule, Culprit.Of(Part));

    /// <summary>An answer makes no sense in a kitchen.</summary>
    /// <param name="Rule">The rule's name.</param>
    /// <param name="Part">Whose answer.</param>
    /// <param name="How">In what way.</param>
    /// <param name="Answer">What the key gives, in the part's unit.</param>
    public sealed record OutOfReason(string Rule, Part Part, AnswerFault How, double Answer) : Breach(Rule, Culprit.Of(Part))
    {
        private protected override object? Apart => How;
    }

    /// <summary>An answer has more digits than anybody writes.</summary>
    /// <param name="Rule">The rule's name.</param>
    /// <param name="Part">Whose answer.</param>
    /// <param name="Most">How many are allowed.</param>
    /// <param name="Answer">What the key gives, in the part's unit.</param>
    public sealed record AnswerTooLong(string Rule, Part Part, int Most, double Answer) : Breach(Rule, Culprit.Of(Part));

    /// <summary>A constraint is not TRUE.</summary>
    /// <param name="Rule">The rule's name.</param>
    /// <param name="Constraint">Which one.</param>
    /// <param name="IsComparison">False if it is neither true nor false.</param>
    /// <param name="Answers">The answers that it speaks of.</param>
    public sealed record ConstraintBroken(
        string Rule,
        CellFormula Constraint,
        bool IsComparison,
        IReadOnlyList<(Part Part, double Answer)> Answers
    ) : Breach(Rule, Culprit.Of(Constraint))
    {
        private protected override object? Apart => IsComparison;
    }

    /// <summary>A part goes wrong when earlier answers are rounded as the answer key prints them.</summary>
    /// <param name="Rule">The rule's name.</param>
    /// <param name="Part">Which part.</param>
    /// <param name="Found">What it then gives; null for no number.</param>
    /// <param name="Right">What the key gives.</param>
    public sealed record WrongWhenRounded(string Rule, Part Part, double? Found, double Right) : Breach(Rule, Culprit.Of(Part));

    /// <summary>The numbers are harder or easier to work with than others'.</summary>
    /// <param name="Rule">The rule's name.</param>
    /// <param name="Effort">Digits, steps and carries.</param>
    /// <param name="Allowed">How many are allowed.</param>
    public sealed record UnevenEffort(string Rule, int Effort, EffortBand Allowed) : Breach(Rule, new Culprit());

    /// <summary>No instrument shows a given so finely.</summary>
    /// <param name="Rule">The rule's name.</param>
    /// <param name="Of">The given.</param>
    /// <param name="Value">What was drawn.</param>
    /// <param name="Step">The smallest step that can be read, as it is shown.</param>
    public sealed record GivenTooFine(string Rule, Given Of, decimal Value, decimal Step) : Breach(Rule, Culprit.Of(Of));

    /// <summary>A given has more digits than a person would write down.</summary>
    /// <param name="Rule">The rule's name.</param>
    /// <param name="Of">The given.</param>
    /// <param name="Value">What was drawn.</param>
    public sealed record GivenTooLong(string Rule, Given Of, decimal Value) : Breach(Rule, Culprit.Of(Of));

    /// <summary>A misconception comes too close to the right answer.</summary>
    /// <param name="Rule">The rule's name.</param>
    /// <param name="Part">The part.</param>
    /// <param name="Misconception">Which of its misconceptions.</param>
    /// <param name="Mistaken">What it gives.</param>
    /// <param name="Right">What the key gives.</param>
    public sealed record CloseToRight(string Rule, Part Part, Misconception Misconception, double Mistaken, double Right)
        : Breach(Rule, Culprit.Of(Part, Misconception));

    /// <summary>Two misconceptions cannot be told apart.</summary>
    /// <param name="Rule">The rule's name.</param>
    /// <param name="Part">The part.</param>
    /// <param name="Earlier">The one that is listed earlier.</param>
    /// <param name="Later">The other.</param>
    /// <param name="OfEarlier">What the earlier gives.</param>
    /// <param name="OfLater">What the later gives.</param>
    public sealed record Alike(string Rule, Part Part, Misconception Earlier, Misconception Later, double OfEarlier, double OfLater)
        : Breach(Rule, Culprit.Of(Part, Later))
    {
        private protected override object? Apart => Earlier.Id;
    }

    /// <summary>An answer that is judged by how it rounds lies at a half.</summary>
    /// <param name="Rule">The rule's name.</param>
    /// <param name="Part">Whose answer.</param>
    /// <param name="Answer">What the key gives, in the part's unit.</param>
    public sealed record AtHalf(string Rule, Part Part, double Answer) : Breach(Rule, Culprit.Of(Part));

    /// <summary>A key stands at a tie or a limit: a hair's breadth in a given makes a step in the answer.</summary>
    /// <param name="Rule">The rule's name.</param>
    /// <param name="Part">Whose key.</param>
    /// <param name="Moved">The given.</param>
    /// <param name="Right">What the key gives.</param>
    public sealed record AtStep(string Rule, Part Part, Given Moved, double Right) : Breach(Rule, Culprit.Of(Part));

    /// <summary>A part is answered by copying a given.</summary>
    /// <param name="Rule">The rule's name.</param>
    /// <param name="Part">The part.</param>
    /// <param name="From">The given.</param>
    /// <param name="Value">What stands there.</param>
    /// <param name="Right">What the key gives.</param>
    public sealed record CopiesGiven(string Rule, Part Part, Given From, decimal Value, double Right) : Breach(Rule, Culprit.Of(Part))
    {
        private protected override object? Apart => From.Id;
    }

    /// <summary>A part is answered by copying an earlier answer.</summary>
    /// <param name="Rule">The rule's name.</param>
    /// <param name="Part">The part.</param>
    /// <param name="From">The earlier part.</param>
    /// <param name="Answer">What its key gives.</param>
    /// <param name="Right">What the part's own key gives.</param>
    public sealed record CopiesAnswer(string Rule, Part Part, Part From, double Answer, double Right) : Breach(Rule, Culprit.Of(Part))
    {
        private protected override object? Apart => From.Id;
    }

    /// <summary>After an earlier misconception, a later one comes too close to the right method.</summary>
    /// <param name="Rule">The rule's name.</param>
    /// <param name="Slip">The earlier misconception.</param>
    /// <param name="In">Its part.</param>
    /// <param name="Part">The later part.</param>
    /// <param name="Later">The later misconception.</param>
    /// <param name="Mistaken">What it gives after the slip.</param>
    /// <param name="Carried">What the right method gives after the slip.</param>
    public sealed record CloseAfterSlip(
        string Rule,
        Misconception Slip,
        Part In,
        Part Part,
        Misconception Later,
        double Mistaken,
        double Carried
    ) : Breach(Rule, Culprit.Of(Part, Later))
    {
        private protected override object? Apart => (In.Id, Slip.Id);
    }
}
