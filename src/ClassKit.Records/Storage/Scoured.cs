namespace ClassKit.Records.Storage;

/// <summary>Whether bytes of what was deleted are still in the file of a record.</summary>
public enum Scoured
{
    /// <summary>Nothing is left of it.</summary>
    Gone,

    /// <summary>
    /// The record was written anew without it, and somebody else who reads it still needs the old pages: the database takes them out of the
    /// file as soon as nobody has it open.
    /// </summary>
    WhenClosed,

    /// <summary>Somebody else was writing all the while: the record was not written anew, and must be once more.</summary>
    OthersWrite,

    /// <summary>There was no room on the disk to write the record anew: it must be once more.</summary>
    NoRoom,
}
