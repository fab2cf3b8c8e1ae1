namespace ClassKit.Content.Recognition;

/// <summary>What a file or folder of authored content is.</summary>
public enum ContentKind
{
    /// <summary>A lesson's folder with all that it links to.</summary>
    Lesson,

    /// <summary>A lesson's baker's formula.</summary>
    Formula,

    /// <summary>An exercise.</summary>
    Exercise,

    /// <summary>A marking scheme for calculations.</summary>
    MarkingScheme,

    /// <summary>A rubric for bench work.</summary>
    PracticalRubric,

    /// <summary>A rule that makes a grade of the marks of a term.</summary>
    GradeRule,

    /// <summary>The description of a term.</summary>
    Term,

    /// <summary>A class profile.</summary>
    ClassProfile,

    /// <summary>A price list.</summary>
    PriceList,

    /// <summary>A roster.</summary>
    Roster,

    /// <summary>A file of ingredients.</summary>
    Ingredients,
}
