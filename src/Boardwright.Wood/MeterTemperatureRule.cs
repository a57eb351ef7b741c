namespace Boardwright.Wood;

/// <summary>How a reading is corrected for the temperature of the wood.</summary>
public enum MeterTemperatureRule
{
    /// <summary>One point of moisture for each 20 F below 70 F, and the other way above: the rule of the trade.</summary>
    OnePerTwentyFahrenheit,

    /// <summary>The equation of Pfaff and Garrahan for resistance meters on the Douglas-fir scale.</summary>
    PfaffGarrahan,
}
