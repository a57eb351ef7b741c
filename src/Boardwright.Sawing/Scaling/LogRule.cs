namespace Boardwright.Sawing;

/// <summary>A rule by which a log is measured. The rule is a term of the contract, not a prediction of the lumber.</summary>
public enum LogRule
{
    /// <summary>Doyle: board feet, common for hardwoods; far under the sawn yield in small logs.</summary>
    Doyle,

    /// <summary>Scribner by the factor table, to the board foot.</summary>
    Scribner,

    /// <summary>Scribner Decimal C: tens of board feet with the printed exceptions.</summary>
    ScribnerDecimalC,

    /// <summary>International, 1/4 in kerf.</summary>
    InternationalQuarter,

    /// <summary>International, 1/8 in kerf.</summary>
    InternationalEighth,

    /// <summary>Ontario Scalers' Rule.</summary>
    Ontario,

    /// <summary>Roy (Quebec): a table only.</summary>
    Roy,

    /// <summary>Cubic volume from the areas of both ends.</summary>
    Smalian,

    /// <summary>Cubic volume from the area at the middle.</summary>
    Huber,

    /// <summary>Cubic volume from both ends and the middle.</summary>
    Newton,
}
