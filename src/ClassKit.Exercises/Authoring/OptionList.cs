namespace ClassKit.Exercises.Authoring;

/// <summary>What can be chosen from, by one part or by several that share the list.</summary>
/// <param name="Id">Unique in its exercise: that of the part, or the list's own name.</param>
/// <param name="Kind">What choosing from it is called.</param>
/// <param name="Options">As their author wrote them; students read them in other orders. <see cref="Fewest"/> to
/// <see cref="Most"/>.</param>
public sealed record OptionList(string Id, ChoiceKind Kind, IReadOnlyList<ChoiceOption> Options)
{
    /// <summary>From one there is nothing to choose.</summary>
    public const int Fewest = 2;

    /// <summary>More than these nobody keeps in mind, and a drop-down no longer shows. Common practice, no source.</summary>
    public const int Most = 8;

    /// <summary>The option that a key's number stands for, counted from 1; null if it stands for none.</summary>
    public ChoiceOption? Find(double number) =>
        number >= 1 && number <= Options.Count && number == Math.Floor(number) ? Options[(int)number - 1] : null;

    /// <summary>The number that stands for an option in keys, from 1; null if the list has none of that id.</summary>
    public int? NumberOf(string id) =>
        Options.Index().FirstOrDefault(entry => entry.Item.Id.Equals(id, StringComparison.OrdinalIgnoreCase), (-1, null!)).Index
            is var at
                and >= 0
            ? at + 1
            : null;
}
