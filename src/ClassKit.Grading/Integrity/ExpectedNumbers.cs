using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Dealing;

namespace ClassKit.Grading.Integrity;

/// <summary>
/// What is right at one part for each of a class, in order, so that those whom a number fits are found without asking everybody.
/// </summary>
internal sealed class ExpectedNumbers
{
    private readonly Part _part;
    private readonly double[] _numbers;
    private readonly int[] _seats;

    public ExpectedNumbers(IReadOnlyList<DealtStudent> seats, string exercise, Part part)
    {
        _part = part;
        var expected = seats
            .Index()
            .Select(seat =>
                (seat.Index, Number: seat.Item.AnswersOf(exercise).TryGetValue(part.Id, out var number) ? number : (double?)null)
            )
            .Where(seat => seat.Number is not null)
            .ToList();
        (_numbers, _seats) = ([.. expected.Select(seat => seat.Number!.Value)], [.. expected.Select(seat => seat.Index)]);
        Array.Sort(_numbers, _seats);
    }

    /// <summary>The places of those for whom a number is right, in the order of the class.</summary>
    public List<int> Accepting(double number)
    {
        // What is accepted lies around a number; how far is asked of the numbers themselves.
        var middle = Array.BinarySearch(_numbers, number) is >= 0 and var found ? found : ~Array.BinarySearch(_numbers, number);
        var reach = Reach(number);
        var fits = new List<int>();
        for (var at = middle - 1; at >= 0 && number - _numbers[at] <= reach; at--)
            Take(at);
        for (var at = middle; at < _numbers.Length && _numbers[at] - number <= reach; at++)
            Take(at);
        fits.Sort();
        return fits;

        void Take(int at)
        {
            if (_part.Tolerance.Accepts(_numbers[at], number))
                fits.Add(_seats[at]);
        }
    }

    /// <summary>No number further away than this accepts the one given.</summary>
    private double Reach(double number)
    {
        var (amount, around) = (_part.Tolerance.Amount, Math.Abs(number));

        // A fraction of the expected number, of which the given one is at least 1 - amount: |e - n| <= a|e| gives |e| <= |n| / (1 - a).
        if (_part.Tolerance.IsRelative)
            return amount < 1 ? (amount * around / (1 - amount)) + Slack(around / (1 - amount)) : double.PositiveInfinity;
        return amount + Slack(around + amount);

        static double Slack(double size) => 1e-8 * Math.Max(1, size);
    }
}
