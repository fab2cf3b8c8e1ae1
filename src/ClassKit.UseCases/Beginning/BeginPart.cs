namespace ClassKit.UseCases.Beginning;

/// <summary>What is begun.</summary>
public enum BeginPart
{
    /// <summary>
    /// A whole teaching folder: class, roster, prices, ingredients, rubrics and a short lesson with a formula and two exercises.
    /// </summary>
    Folder,

    /// <summary>One more lesson, for a place among the lessons of such a folder.</summary>
    Lesson,

    /// <summary>One more class, with a roster, a price list and ingredients.</summary>
    Class,

    /// <summary>One more exercise.</summary>
    Exercise,
}
