namespace ClassKit.Terms.Outlooks;

/// <summary>What one grade of the scale takes.</summary>
/// <param name="Place">Its place in the scale.</param>
/// <param name="State">Whether it can be had.</param>
/// <param name="Share">The least share needed in every work that is still to come, 0 to 1: 0 where sure, 1 where out of reach.</param>
public sealed record OutlookStep(int Place, OutlookState State, decimal Share);
