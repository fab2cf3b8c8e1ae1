namespace ClassKit.Baking.Explanations;

/// <summary>A result that brings along how it was computed.</summary>
public interface IExplained
{
    /// <summary>The steps, in the order of computing.</summary>
    Explanation Explanation { get; }
}
