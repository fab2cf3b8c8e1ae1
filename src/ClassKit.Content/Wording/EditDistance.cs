namespace ClassKit.Content.Wording;

/// <summary>How many typing slips lie between two words: letters added, left out, changed, or two neighbours swapped.</summary>
/// <remarks>Optimal string alignment distance, a restriction of Damerau 1964.</remarks>
internal static class EditDistance
{
    public static int Between(string left, string right)
    {
        var distances = new int[left.Length + 1, right.Length + 1];
        for (var i = 0; i <= left.Length; i++)
            distances[i, 0] = i;
        for (var j = 0; j <= right.Length; j++)
            distances[0, j] = j;
        for (var i = 1; i <= left.Length; i++)
        {
            for (var j = 1; j <= right.Length; j++)
            {
                var changed = distances[i - 1, j - 1] + (left[i - 1] == right[j - 1] ? 0 : 1);
                var best = Math.Min(changed, Math.Min(distances[i - 1, j], distances[i, j - 1]) + 1);
                if (i > 1 && j > 1 && left[i - 1] == right[j - 2] && left[i - 2] == right[j - 1])
                    best = Math.Min(best, distances[i - 2, j - 2] + 1);
                distances[i, j] = best;
            }
        }
        return distances[left.Length, right.Length];
    }
}
