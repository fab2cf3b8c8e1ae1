using System.Globalization;

namespace ClassKit.Workbooks.Tests.Samples;

/// <summary>Runs a test's thread as on a machine that writes 0,65.</summary>
internal sealed class CommaDecimals : IDisposable
{
    private readonly CultureInfo _before = Thread.CurrentThread.CurrentCulture;

    public CommaDecimals()
    {
        var culture = (CultureInfo)CultureInfo.InvariantCulture.Clone();
        culture.NumberFormat.NumberDecimalSeparator = ",";
        culture.NumberFormat.NumberGroupSeparator = ".";
        culture.NumberFormat.PercentDecimalSeparator = ",";
        culture.NumberFormat.NegativeSign = "−";
        culture.TextInfo.ListSeparator = ";";
        Thread.CurrentThread.CurrentCulture = culture;
    }

    public void Dispose() => Thread.CurrentThread.CurrentCulture = _before;
}
