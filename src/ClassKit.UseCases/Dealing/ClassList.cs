using ClassKit.Content.Classes;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.Rosters;
using ClassKit.Content.Sources;
using ClassKit.Exercises.Cohorts;
using ClassKit.Lessons.Classes;

namespace ClassKit.UseCases.Dealing;

/// <summary>The students of a class, with what its profile says of them all.</summary>
internal static class ClassList
{
    /// <summary>The list that was given, or else the one that the class file names; null where there is neither.</summary>
    /// <param name="library">What reads files.</param>
    /// <param name="rosterFile">What was given; null for nothing.</param>
    /// <param name="classFile">The class profile; null for none.</param>
    public static Source? Named(Library library, string? rosterFile, string? classFile)
    {
        ArgumentNullException.ThrowIfNull(library);
        return rosterFile is not null ? library.At(rosterFile)
            : classFile is not null ? NamedRoster.Of(library.At(classFile))
            : null;
    }

    /// <summary>Says that there is no list.</summary>
    /// <param name="file">The class profile, or what else was given.</param>
    public static Diagnostic Missing(string file) =>
        new(file, null, "Nothing says who is in the class", "Name the list in the class file, `roster: roster.csv`, or give it besides.");

    /// <summary>Reads the roster, and the profile where there is one.</summary>
    public static Reading<Roster> Read(Source rosterFile, Source? classFile) =>
        classFile is null ? RosterReader.Read(rosterFile) : Of(rosterFile, ClassProfileReader.Read(classFile));

    /// <summary>The roster with the name, the time zone and the paper of a profile.</summary>
    public static Reading<Roster> Of(Source rosterFile, Reading<ClassProfile> profile)
    {
        var roster = RosterReader.Read(rosterFile, profile.Model?.Name);
        return profile.Succeeded && roster.Succeeded
            ? new(roster.Model with { TimeZone = profile.Model.TimeZone, Paper = profile.Model.Paper }, [])
            : new(null, [.. profile.Problems, .. roster.Problems]);
    }
}
