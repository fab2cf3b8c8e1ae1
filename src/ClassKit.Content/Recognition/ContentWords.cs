namespace ClassKit.Content.Recognition;

/// <summary>Kinds of content as messages name them.</summary>
internal static class ContentWords
{
    public static string Of(ContentKind kind) =>
        kind switch
        {
            ContentKind.Lesson => "a lesson",
            ContentKind.Formula => "a baker's formula",
            ContentKind.Exercise => "an exercise",
            ContentKind.MarkingScheme => "a marking scheme",
            ContentKind.PracticalRubric => "a practical rubric",
            ContentKind.GradeRule => "a rule for grades",
            ContentKind.Term => "the description of a term",
            ContentKind.ClassProfile => "a class profile",
            ContentKind.PriceList => "a price list",
            ContentKind.Roster => "a roster",
            ContentKind.Ingredients => "a file of ingredients",
        };
}
