namespace ClassKit.Lessons.Authored;

/// <summary>What an amount for greasing, dusting or glazing is meant for.</summary>
public enum SurfaceShare
{
    /// <summary>A team's whole batch.</summary>
    Batch,

    /// <summary>One piece.</summary>
    Piece,

    /// <summary>One tin or tray of the equipment.</summary>
    Tin,

    /// <summary>One fryer or pot, which is filled once for all that is fried in it.</summary>
    Fryer,
}
