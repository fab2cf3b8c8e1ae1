namespace ClassKit.Grading.Findings.Refusals;

/// <summary>Why a file that came back could not be opened or judged, none of which is the student's doing.</summary>
public enum OpeningFault
{
    /// <summary>The right to read it is missing.</summary>
    NotAllowed,

    /// <summary>It was there when grading began and is gone, or its name cannot be used on this system.</summary>
    Gone,

    /// <summary>Its name, or those of the folders around it, are too long.</summary>
    LongName,

    /// <summary>The disk or network that it lies on did not give it.</summary>
    Disk,

    /// <summary>The program that grades made a mistake.</summary>
    OurError,
}
