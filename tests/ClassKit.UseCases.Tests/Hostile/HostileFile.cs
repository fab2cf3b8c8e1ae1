namespace ClassKit.UseCases.Tests.Hostile;

/// <summary>One file of the corpus.</summary>
/// <param name="Name">Says what is wrong with it.</param>
/// <param name="Make">Makes its bytes, the same ones each time.</param>
/// <param name="MustBeRefused">True if no program should take it for a workbook that can be graded.</param>
/// <param name="IsOneOfMany">True if others do the same in another part of the file, or by another chance.</param>
internal sealed record HostileFile(string Name, Func<byte[]> Make, bool MustBeRefused = false, bool IsOneOfMany = false);
