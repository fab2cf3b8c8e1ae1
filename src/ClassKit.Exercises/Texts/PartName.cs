namespace ClassKit.Exercises.Texts;

/// <summary>What a part is called in a word or two: its id as people say it.</summary>
public static class PartName
{
    /// <summary><c>water_temp</c> is water temperature, <c>oven_c</c> the oven, whose unit stands beside it.</summary>
    public static string Of(string id)
    {
        ArgumentNullException.ThrowIfNull(id);
        return string.Join(
            ' ',
            id.Split('_').Where(word => word is not ("c" or "f")).Select(word => word == "temp" ? "temperature" : word)
        );
    }
}
