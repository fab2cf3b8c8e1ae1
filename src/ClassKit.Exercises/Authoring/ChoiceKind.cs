namespace ClassKit.Exercises.Authoring;

/// <summary>What a list of options is for.</summary>
public enum ChoiceKind
{
    /// <summary>One part chooses from it.</summary>
    Choose,

    /// <summary>
    /// Several parts each choose from it, such as the cause of each of several failures; an option may be right more than once, or never.
    /// </summary>
    Match,

    /// <summary>The parts are places in an order, and each option has one place.</summary>
    Order,
}
