namespace ClassKit.Baking.Yeast;

/// <summary>The forms in which baker's yeast is sold.</summary>
public enum YeastKind
{
    /// <summary>Fresh or compressed: a moist cake.</summary>
    Fresh,

    /// <summary>Active dry: granules to be dissolved in warm water.</summary>
    ActiveDry,

    /// <summary>Instant dry: fine, mixed into the flour.</summary>
    Instant,
}
