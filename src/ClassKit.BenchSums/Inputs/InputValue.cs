namespace ClassKit.BenchSums.Inputs;

/// <summary>A value that was read for an input, whatever its kind.</summary>
internal abstract record InputValue;

/// <summary>A value of one kind.</summary>
internal sealed record InputValue<T>(T Value) : InputValue;
