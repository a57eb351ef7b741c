namespace Boardwright.Drying;

/// <summary>How a moisture content was found; decides how far it may be off and what its errors have in common.</summary>
public enum ReadingKind
{
    /// <summary>A mean with a stated error of its own.</summary>
    Stated,

    /// <summary>Electric meter with pins: the setting for the wood is wrong by the same amount every time.</summary>
    PinMeter,

    /// <summary>Sample boards weighed again and again: their dry weight is an estimate, and they may not be like the stack.</summary>
    SampleBoard,

    /// <summary>Sections dried in the oven, cut anew each time: no error in common.</summary>
    OvenSection,

    /// <summary>The whole pack on a scale: its dry weight follows from footage and density and is wrong by the same share every time.</summary>
    PackWeight,

    /// <summary>Water collected from the load: the start and the dry weight are wrong by the same amount every time.</summary>
    Condensate,

    /// <summary>Judged by hand and eye.</summary>
    Estimate,
}
