namespace ClassKit.Notes;

/// <summary>Why bytes of somebody who was erased are still in the file of the record, though the record holds nothing of them.</summary>
public enum StillInFile
{
    /// <summary>Somebody else reads the record: they go as soon as nobody has it open.</summary>
    OthersRead,

    /// <summary>Somebody else was writing in the record: it must be done once more.</summary>
    OthersWrite,

    /// <summary>There was no room on the disk: it must be done once more.</summary>
    NoRoom,
}
