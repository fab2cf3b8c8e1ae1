namespace ClassKit.PracticeBank.Tests.Oracles;

/// <summary>Computes every part of an exercise with ClassKit.Baking, which knows nothing of keys.</summary>
internal delegate IReadOnlyList<KnownAnswer> Oracle(Inputs given);
