using System.Diagnostics.CodeAnalysis;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Pictures;
using ClassKit.Lessons.Values;

namespace ClassKit.Lessons.Packs;

/// <summary>
/// A pack in words, the last stage: computed, planned, and with every value that its texts name as it is written for the class. Pages and
/// workbooks only lay it out.
/// </summary>
public sealed record LessonPack : PlannedPack
{
    private readonly IReadOnlyDictionary<string, string> _values;

    /// <summary>The pack in words.</summary>
    /// <param name="planned">The pack.</param>
    /// <param name="values">Every value of <see cref="ValueNames"/> by its name, in the class's units.</param>
    /// <exception cref="ArgumentException">A value that a text may name is missing.</exception>
    [SetsRequiredMembers]
    public LessonPack(PlannedPack planned, IReadOnlyDictionary<string, string> values)
        : base(planned)
    {
        if (ValueNames.Of(planned.Lesson.Formulas).FirstOrDefault(name => !values.ContainsKey(name)) is { } missing)
            throw new ArgumentException($"Nothing says how {missing} is written.", nameof(values));
        _values = values;
    }

    /// <summary>The pictures of the lesson and its breads.</summary>
    private IReadOnlyList<Picture> Pictures =>
        field ??= [.. Lesson.Pictures.Concat(Lesson.Formulas.SelectMany(formula => formula.Pictures))];

    /// <summary>A text of the lesson as this class reads it.</summary>
    public string Words(TextTemplate text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return PictureText.Embed(text.Fill(place => _values.GetValueOrDefault(place.Name)), Pictures);
    }
}
