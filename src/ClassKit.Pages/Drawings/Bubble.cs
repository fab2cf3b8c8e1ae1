namespace ClassKit.Pages.Drawings;

/// <summary>A hole in a cut, an ellipse that may lean.</summary>
/// <param name="X">Its middle, in millimetres from the drawing's left.</param>
/// <param name="Y">Its middle, in millimetres from the top.</param>
/// <param name="Wide">Half of its width.</param>
/// <param name="Tall">Half of its height.</param>
/// <param name="Lean">By how many degrees it leans to the right.</param>
internal readonly record struct Bubble(double X, double Y, double Wide, double Tall, double Lean = 0)
{
    /// <summary>The circle around it, which no other may come near.</summary>
    public double Reach => Math.Max(Wide, Tall);
}
