using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Randomness;
using ClassKit.Exercises.Variants;

namespace ClassKit.Exercises.Lettering;

/// <summary>The options of a list in the order in which one student reads them, each behind a letter.</summary>
/// <remarks>
/// The order follows from the exercise, the list and the numbers dealt, and from nothing else: whoever writes a sheet, marks it or prints
/// its key comes to the same letters, and nothing more need be kept of a deal. Who has other numbers has most likely another order.
/// </remarks>
public sealed class LetteredOptions
{
    private readonly OptionList _list;

    private LetteredOptions(OptionList list, IReadOnlyList<ChoiceOption> inOrder) => (_list, InOrder) = (list, inOrder);

    /// <summary>The options; the first is behind the letter A.</summary>
    public IReadOnlyList<ChoiceOption> InOrder { get; }

    /// <summary>The letters, A first.</summary>
    public IReadOnlyList<string> Letters => [.. InOrder.Index().Select(entry => Letter(entry.Index))];

    /// <summary>The options of a list as they stand before a student.</summary>
    /// <param name="exercise">The exercise.</param>
    /// <param name="list">One of its lists.</param>
    /// <param name="givens">What the student was dealt, by given id.</param>
    public static LetteredOptions Of(Exercise exercise, OptionList list, IReadOnlyDictionary<string, decimal> givens)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        ArgumentNullException.ThrowIfNull(list);
        var random = SeededDraws.For(0, "options", exercise.Id, list.Id, VariantKey.Of(exercise, givens));
        ChoiceOption[] order = [.. list.Options];
        // Fisher and Yates' shuffle, from the end.
        for (var last = order.Length - 1; last > 0; last--)
        {
            var other = random.Below(last + 1);
            (order[last], order[other]) = (order[other], order[last]);
        }
        return new(list, order);
    }

    /// <summary>The letter of the option that a key's number stands for; empty if it stands for none.</summary>
    public string LetterOf(double number) => _list.Find(number) is { } option ? LetterOf(option) : "";

    /// <summary>The letter of an option.</summary>
    public string LetterOf(ChoiceOption option) => Letter(InOrder.Index().First(entry => entry.Item.Id == option.Id).Index);

    /// <summary>The option behind a letter, in upper or lower case; null if there is none.</summary>
    public ChoiceOption? At(char letter) =>
        char.ToUpperInvariant(letter) - 'A' is var place && place >= 0 && place < InOrder.Count ? InOrder[place] : null;

    private static string Letter(int place) => ((char)('A' + place)).ToString();
}
