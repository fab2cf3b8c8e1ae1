namespace ClassKit.Workbooks.Look;

/// <summary>A share in percent, worked out by the spreadsheet program itself: what <c>Unit.Shown</c> is to numbers, for cell formulas.</summary>
internal static class InPercent
{
    /// <summary>The formula of a share times 100, without the sign in front.</summary>
    /// <param name="share">A formula without its leading <c>=</c> that binds at least as tightly as a product.</param>
    public static string Of(string share) => "100*" + share;
}
