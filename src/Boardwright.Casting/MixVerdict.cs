namespace Boardwright.Casting;

/// <summary>What a pair of weighings is worth.</summary>
public enum MixVerdict
{
    /// <summary>Within 2 %.</summary>
    Good,

    /// <summary>Beyond 2 and within 5 %: will cure, perhaps softer; weigh better next time.</summary>
    Borderline,

    /// <summary>Beyond 5 %: will not cure fully; heat does not mend it.</summary>
    Wrong,
}
