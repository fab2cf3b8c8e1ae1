namespace ClassKit.Workbooks.Requisitions;

/// <summary>Where the columns of a requisition stand: the ingredient, one for each bread, then the rest.</summary>
internal sealed class RequisitionColumns(int breads, bool isFried, bool isShown)
{
    public int Needed => breads + 2;

    public int OnHand => breads + 3;

    public int Pack => breads + 4;

    public int Holds => breads + 5;

    public int Price => breads + 6;

    public int PerKilogram => breads + 7;

    public int Packs => breads + 8;

    public int ToPay => breads + 9;

    public int Used => breads + 10;

    public int Allergens => breads + 11;

    /// <summary>What fryers are filled with; null where nothing is fried.</summary>
    public int? Fryers => isFried ? breads + 12 : null;

    /// <summary>What the demonstrations take; null where they take nothing.</summary>
    public int? Shown => isShown ? (Fryers ?? Allergens) + 1 : null;

    public int Last => Shown ?? Fryers ?? Allergens;

    /// <summary>The column of a bread, counted from 0.</summary>
    public static int Bread(int index) => index + 2;
}
