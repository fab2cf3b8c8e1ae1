namespace ClassKit.Desk.Folders;

/// <summary>Names that nothing has yet, so that what is kept is never written over anything.</summary>
internal static class FreeName
{
    /// <summary>The first of a series of names that nothing in a folder has.</summary>
    /// <param name="folder">The folder, there or not.</param>
    /// <param name="named">The names in order, from 1.</param>
    public static string In(string folder, Func<int, string> named)
    {
        for (var number = 1; ; number++)
        {
            if (named(number) is var name && !Path.Exists(Path.Combine(folder, name)))
                return name;
        }
    }

    /// <summary>The plain name if nothing has it, else the first of the numbered ones.</summary>
    /// <param name="folder">The folder, there or not.</param>
    /// <param name="plain">The name without a number.</param>
    /// <param name="numbered">The others in order, from 2.</param>
    public static string In(string folder, string plain, Func<int, string> numbered) =>
        In(folder, number => number == 1 ? plain : numbered(number));
}
