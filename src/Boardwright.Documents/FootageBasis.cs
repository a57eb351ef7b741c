namespace Boardwright.Documents;

/// <summary>What a footage counts: the wood as it is now, or as it was before drying.</summary>
public enum FootageBasis
{
    Net,
    Gross,
}
