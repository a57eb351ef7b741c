namespace Boardwright.Sawing;

/// <summary>How a log is opened.</summary>
public enum SawPattern
{
    /// <summary>Through and through: parallel cuts across the whole log.</summary>
    Live,

    /// <summary>Side boards off two faces, then the cant between them turned a quarter and sawn across.</summary>
    Cant,

    /// <summary>For standing rings: a middle block sawn flat with the heart taken out, then both outer parts turned a quarter.</summary>
    Quarter,

    /// <summary>Through and through into slabs of one thickness, kept in order.</summary>
    Boule,
}
