namespace ClassKit.Terms.Rules;

/// <summary>What a resit counts for.</summary>
/// <param name="Choice">Which sitting counts.</param>
/// <param name="AtMost">The greatest share that a resit can earn, above 0 to 1; 1 where it is not capped. A sitting before which the
/// student was never marked nor absent is their first, whatever its number, and is not capped.</param>
public sealed record ResitRule(ResitChoice Choice, decimal AtMost);
