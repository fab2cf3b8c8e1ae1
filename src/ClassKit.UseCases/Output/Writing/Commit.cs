namespace ClassKit.UseCases.Output.Writing;

/// <summary>Puts staged files in place by renaming, within milliseconds, and takes everything back if one cannot be.</summary>
/// <remarks>A file that is replaced changes places with the new one, so that it is there until all is done.</remarks>
internal sealed class Commit(WorkFolder work)
{
    private readonly Stack<Action> _undo = [];

    /// <summary>Does what a journal says, from the beginning.</summary>
    /// <exception cref="IOException">Something could not be renamed; all is as it was, unless it is a
    /// <see cref="CutOffException"/>.</exception>
    public void Run(Journal journal)
    {
        try
        {
            foreach (var folder in journal.Folders)
                Make(OwnPath.In(work.Root, folder));
            foreach (var (from, to) in journal.Asides)
                Move(OwnPath.In(work.Root, from), OwnPath.In(work.Root, to));
            foreach (var put in journal.Puts)
                Put(work.Staged(put.Staged), OwnPath.In(work.Root, put.Path));
            foreach (var removal in journal.Removals)
                Move(OwnPath.In(work.Root, removal.Path), work.Staged(work.NextName()));
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            TakeBack();
            throw;
        }
    }

    private void TakeBack()
    {
        try
        {
            while (_undo.TryPop(out var back))
                back();
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            throw new CutOffException(failure);
        }
    }

    /// <summary>Puts a staged file in place; what stood there is staged afterwards.</summary>
    public void Put(string staged, string target)
    {
        if (Place.At(target) == Standing.Nothing)
        {
            Move(staged, target);
        }
        else if (Exchange.Try(staged, target))
        {
            _undo.Push(() =>
            {
                if (!Exchange.Try(staged, target))
                    throw new IOException($"{target} could not be put back.");
            });
        }
        else
        {
            Move(target, work.Staged(work.NextName()));
            Move(staged, target);
        }
    }

    private void Move(string from, string to)
    {
        Place.Move(from, to);
        _undo.Push(() => Place.Move(to, from));
    }

    private void Make(string folder)
    {
        if (Place.At(folder) == Standing.Folder)
            return;
        Directory.CreateDirectory(folder);
        _undo.Push(() => Directory.Delete(folder));
    }
}
