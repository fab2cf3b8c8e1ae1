namespace ClassKit.Fuzz;

/// <summary>Something that takes any text and must stand it.</summary>
internal interface ITarget
{
    /// <summary>What became of the inputs so far.</summary>
    string Summary { get; }

    /// <summary>Makes an input.</summary>
    string Mutate(Mutator mutator);

    /// <summary>Tries an input.</summary>
    /// <returns>What is wrong; null if nothing is. Exceptions are wrong too.</returns>
    string? Run(string input);
}
