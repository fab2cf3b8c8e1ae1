namespace ClassKit.CellFormulas.Calls;

/// <summary>One function in the registry.</summary>
/// <param name="Name">In capitals.</param>
/// <param name="Least">The fewest arguments.</param>
/// <param name="Most">The most arguments.</param>
/// <param name="Parameters">A letter for each parameter, V for a value, R for a range, A for an array; after a star, the letters that
/// further arguments repeat.</param>
/// <param name="Run">The function itself.</param>
/// <param name="Traits">What is special about it.</param>
internal sealed record FunctionRow(
    string Name,
    int Least,
    int Most,
    string Parameters,
    CellFunction Run,
    FunctionTraits Traits = FunctionTraits.None
)
{
    /// <summary>As many arguments as a formula can have.</summary>
    public const int Many = 255;

    private readonly Parameter[] _fixed = Read(
        Parameters.AsSpan(0, Parameters.IndexOf('*', StringComparison.Ordinal) is var star and >= 0 ? star : Parameters.Length)
    );
    private readonly Parameter[] _repeated = Read(Parameters.AsSpan(Parameters.IndexOf('*', StringComparison.Ordinal) + 1));

    public Parameter ParameterAt(int at) => at < _fixed.Length ? _fixed[at] : _repeated[(at - _fixed.Length) % _repeated.Length];

    public bool Has(FunctionTraits trait) => (Traits & trait) != 0;

    private static Parameter[] Read(ReadOnlySpan<char> letters)
    {
        if (letters.IsEmpty)
            return [];
        var parameters = new Parameter[letters.Length];
        for (var at = 0; at < letters.Length; at++)
        {
            parameters[at] = letters[at] switch
            {
                'V' => Parameter.Value,
                'R' => Parameter.Range,
                'A' => Parameter.Array,
                _ => throw new ArgumentException($"No kind of parameter is written '{letters[at]}'."),
            };
        }

        return parameters;
    }
}
