namespace ClassKit.UseCases.Intake;

/// <summary>
/// The boundary between one returned item and all the others: whatever goes wrong inside is answered with an outcome and goes no further.
/// </summary>
/// <remarks>The only place that catches everything. What cannot be gone on from passes: no memory, a run that was cancelled.</remarks>
internal static class Guarded
{
    /// <summary>What the work gives, or what is to be said of its failure.</summary>
    public static T Of<T>(Func<T> work, Func<Exception, T> otherwise)
    {
        try
        {
            return work();
        }
        catch (Exception failure) when (failure is not (OutOfMemoryException or OperationCanceledException))
        {
            return otherwise(failure);
        }
    }

    /// <summary>The items that a source gives for as long as it does; where it breaks off, one more that says so.</summary>
    public static IEnumerable<ReturnedItem> Each(Func<IEnumerable<ReturnedItem>> source, Func<Exception, ReturnedItem> otherwise)
    {
        IEnumerator<ReturnedItem>? items = null;
        var hasMore = true;
        try
        {
            while (hasMore)
            {
                var item = Of(
                    () => (items ??= source().GetEnumerator()).MoveNext() ? items.Current : null,
                    failure =>
                    {
                        hasMore = false;
                        return otherwise(failure);
                    }
                );
                if (item is null)
                    break;
                yield return item;
            }
        }
        finally
        {
            // Also where the run is stopped on the way: an archive that stays open cannot be replaced by a better one.
            Of(() => Close(items), _ => false);
        }
    }

    private static bool Close(IEnumerator<ReturnedItem>? items)
    {
        items?.Dispose();
        return true;
    }
}
