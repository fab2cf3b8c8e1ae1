namespace ClassKit.LessonPacks.Tests.Published;

/// <summary>What is compared.</summary>
internal enum Kind
{
    Liquid,
    Egg,
    Fat,
    Sugar,
    Salt,
    Powder,
    Soda,
    Yeast,
}
