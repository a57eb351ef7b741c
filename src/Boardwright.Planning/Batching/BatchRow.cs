namespace Boardwright.Planning.Batching;

/// <summary>The batches of an oven in order, with what has changed since the last change was kept.</summary>
internal sealed class BatchRow(int most)
{
    private readonly int[] saved = new int[most];
    private int savedCount = -1;

    public readonly int[] Batches = new int[most];
    public int Count;
    public int First = int.MaxValue; // changed place, from which on batches are timed again
    public int Last = -1; // changed place, up to which none is skipped

    public void Touch(int first, int last) => (First, Last) = (Math.Min(First, first), Math.Max(Last, last));

    public void Insert(int batch, int place)
    {
        Save();
        Batches.AsSpan(place, Count - place).CopyTo(Batches.AsSpan(place + 1));
        Batches[place] = batch;
        Count++;
        Last = Last < 0 ? -1 : Last + 1;
        Touch(place, place + 1);
    }

    public void RemoveAt(int place)
    {
        Save();
        Batches.AsSpan(place + 1, Count - place - 1).CopyTo(Batches.AsSpan(place));
        Count--;
        Touch(place, place);
    }

    /// <summary>The order is again what it was at the last <see cref="Settled"/>.</summary>
    public void Restore()
    {
        if (savedCount >= 0)
        {
            saved.AsSpan(0, savedCount).CopyTo(Batches);
            Count = savedCount;
        }
    }

    public void Settled() => (First, Last, savedCount) = (int.MaxValue, -1, -1);

    private void Save()
    {
        if (savedCount < 0)
        {
            Batches.AsSpan(0, Count).CopyTo(saved);
            savedCount = Count;
        }
    }
}
