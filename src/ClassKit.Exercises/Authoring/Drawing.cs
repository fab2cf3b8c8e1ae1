namespace ClassKit.Exercises.Authoring;

/// <summary>What a student looks at before choosing: a thing in the state that the key of the part names.</summary>
/// <param name="Thing">What is drawn.</param>
/// <param name="States">What is seen in each state, in words that do not say which it is: for those who cannot see a picture, and where
/// there can be none.</param>
public sealed record Drawing(DrawnThing Thing, IReadOnlyList<ChoiceOption> States)
{
    /// <summary>What a student sees whose key gives an option's number; null if that option is no state.</summary>
    /// <param name="from">What is chosen from.</param>
    /// <param name="value">What the key gives.</param>
    public ChoiceOption? Seen(OptionList from, double value)
    {
        ArgumentNullException.ThrowIfNull(from);
        return from.Find(value) is { } option ? States.FirstOrDefault(state => state.Id == option.Id) : null;
    }
}
