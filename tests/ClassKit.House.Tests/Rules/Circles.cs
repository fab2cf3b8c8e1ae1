namespace ClassKit.House.Tests.Rules;

/// <summary>Groups of places in a graph each of which leads to all the others.</summary>
internal static class Circles
{
    /// <summary>The groups of two and more, each in order, the largest first. Tarjan, 1972.</summary>
    public static IReadOnlyList<IReadOnlyList<string>> In(IReadOnlyDictionary<string, IReadOnlySet<string>> arrows)
    {
        var search = new Search(arrows);
        foreach (var place in arrows.Keys.Order(StringComparer.Ordinal))
            search.From(place);
        return [.. search.Found.OrderByDescending(circle => circle.Count).ThenBy(circle => circle[0], StringComparer.Ordinal)];
    }

    private sealed class Search(IReadOnlyDictionary<string, IReadOnlySet<string>> arrows)
    {
        private readonly Dictionary<string, (int Number, int Lowest)> _seen = [];
        private readonly Stack<string> _open = new();

        public List<IReadOnlyList<string>> Found { get; } = [];

        public void From(string place)
        {
            if (!_seen.ContainsKey(place))
                Visit(place);
        }

        private int Visit(string place)
        {
            var number = _seen.Count;
            var lowest = number;
            _seen[place] = (number, number);
            _open.Push(place);
            foreach (var next in arrows[place].Where(arrows.ContainsKey).Order(StringComparer.Ordinal))
            {
                if (!_seen.TryGetValue(next, out var before))
                    lowest = Math.Min(lowest, Visit(next));
                else if (_open.Contains(next))
                    lowest = Math.Min(lowest, before.Number);
            }
            _seen[place] = (number, lowest);
            if (lowest == number)
                Close(place);
            return lowest;
        }

        private void Close(string place)
        {
            List<string> circle = [];
            string last;
            do circle.Add(last = _open.Pop());
            while (last != place);
            if (circle.Count > 1)
                Found.Add([.. circle.Order(StringComparer.Ordinal)]);
        }
    }
}
