using ClassKit.Desk.Folders;
using ClassKit.Desk.Jobs;

namespace ClassKit.Desk.Frame;

/// <summary>What every page knows of where it stands.</summary>
/// <param name="Base">What all links are relative to.</param>
/// <param name="Token">What every form brings along.</param>
/// <param name="Here">This page, below the base.</param>
/// <param name="Folder">The folder that the desk is opened on; null before one was chosen.</param>
/// <param name="Work">Long work that is not over.</param>
public sealed record Place(string Base, string Token, string Here, TeachingFolder? Folder, IReadOnlyList<Job> Work);
