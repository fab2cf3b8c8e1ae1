using System.Collections.Concurrent;
using System.Globalization;

namespace ClassKit.Desk.Serving;

/// <summary>
/// Pages that answered a form, each at an address of its own: whoever goes back to one, or loads it again, sees it as it was, and the
/// browser never asks whether the form is to be sent once more.
/// </summary>
internal sealed class FormAnswers
{
    /// <summary>As many as somebody goes back through; beyond these the oldest goes.</summary>
    private const int Most = 40;

    private readonly ConcurrentDictionary<long, FormAnswer> _answers = new();

    private long _last;

    /// <summary>Keeps one.</summary>
    /// <returns>Its address below the room.</returns>
    public string Keep(FormAnswer answer)
    {
        var number = Interlocked.Increment(ref _last);
        _answers[number] = answer;
        _answers.TryRemove(number - Most, out _);
        return string.Create(CultureInfo.InvariantCulture, $"answers/{number}");
    }

    /// <summary>The one of that number; null if there is none any more.</summary>
    public FormAnswer? Find(string? number) =>
        long.TryParse(number, NumberStyles.None, CultureInfo.InvariantCulture, out var known) ? _answers.GetValueOrDefault(known) : null;
}
