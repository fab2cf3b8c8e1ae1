using ClassKit.Exercises.Authoring;

namespace ClassKit.Exercises.Layout;

/// <summary>
/// The rows of an exercise's answers and of the options to choose from: a list of one part's own below the question, one that parts share
/// above the first of them.
/// </summary>
internal sealed class AnswerRows
{
    private readonly List<int> _rows = [];
    private readonly List<OptionPlace> _options = [];

    public AnswerRows(Exercise exercise, int first)
    {
        After = first;
        foreach (var part in exercise.Parts)
        {
            var list = part.Choice?.From;
            var isNew = list is not null && !_options.Exists(place => place.List.Id == list.Id);
            if (isNew && list!.Kind != ChoiceKind.Choose)
                Place(list);
            _rows.Add(After++);
            if (isNew && list!.Kind == ChoiceKind.Choose)
                Place(list);
        }
    }

    /// <summary>The lists, in order.</summary>
    public IReadOnlyList<OptionPlace> Options => _options;

    /// <summary>The first row below all of them.</summary>
    public int After { get; private set; }

    /// <summary>The row of a part's answer.</summary>
    /// <param name="part">Its place in the exercise, from 0.</param>
    public int Of(int part) => _rows[part];

    private void Place(OptionList list)
    {
        _options.Add(new(list, After));
        After += list.Options.Count;
    }
}
