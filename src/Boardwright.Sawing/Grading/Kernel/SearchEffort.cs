namespace Boardwright.Sawing;

/// <summary>Counts largest-cutting steps, so that a search ends; what is spent is the same on every machine.</summary>
internal sealed class SearchEffort(long stepsMax)
{
    public long Steps { get; private set; }

    public bool IsSpent => Steps >= stepsMax;

    public void Spend() => Steps++;
}
