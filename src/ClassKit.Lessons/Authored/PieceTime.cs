namespace ClassKit.Lessons.Authored;

/// <summary>
/// How long one piece is at a step that the batch goes through one after another: a round lies in the pan for two minutes of ten.
/// </summary>
/// <param name="MinMinutes">The shortest; at least 1.</param>
/// <param name="MaxMinutes">The longest; at least <paramref name="MinMinutes"/>, and no longer than the step.</param>
public readonly record struct PieceTime(int MinMinutes, int MaxMinutes);
