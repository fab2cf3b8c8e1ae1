namespace ClassKit.Baking.Batches;

/// <summary>How several losses combine. Both are in print: see <see cref="DoughLoss"/>.</summary>
public enum LossRule
{
    /// <summary>All are shares of the mixed dough and are added: 2 % and 11 % are 13 %.</summary>
    Added,

    /// <summary>Each is a share of what the one before left: 2 % and 11 % leave 0.98 × 0.89, a loss of 12.78 %.</summary>
    Compounded,
}
